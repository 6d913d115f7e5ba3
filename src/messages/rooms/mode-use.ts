import type { Mode } from '../../core/index.js';

/** Where a mode may be used: position, thickness, what it is good and bad for, each with its source. */
export interface ModeUseParams {
  'mode-positions': { mode: Mode; aluminium: boolean };
  'mode-good-for': { mode: Mode };
  'mode-bad-for': { mode: Mode };
  /** Conventional spray on steel or stainless in another position than flat and horizontal. */
  'spray-out-of-position': {
    position: 'vertical' | 'vertical-up' | 'vertical-down' | 'overhead' | 'all-around';
  };
}
