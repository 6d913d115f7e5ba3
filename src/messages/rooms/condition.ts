import type { Mode } from '../../core/index.js';
import type { Nothing } from '../terms.js';

/** What is looked at in a run beside its mode. */
export type ConditionName =
  | 'stubbing'
  | 'arc-outs'
  | 'burn-back'
  | 'long-arc'
  | 'current-dips'
  | 'slow-swings'
  | 'touches'
  | 'spatter'
  | 'regularity'
  | 'cold-lap';

/** What goes with a cold weld and stands in a trace. */
export type ColdSign = 'stubbing' | 'long-time-shorted' | 'current-dips';

interface Counted {
  count: number;
  totalS: number;
}

/** How the arc of a run behaved, and what is usual. */
export interface ConditionParams {
  'condition-stubbing': Counted & { longestS: number };
  'condition-arc-outs': Counted & { by: 'trace' | 'current' | 'sound' };
  'condition-burn-back': { count: number };
  'condition-long-arc': Counted;
  'condition-current-dips': Counted;
  /** Null where no one period stands out. */
  'condition-slow-swings': { shareOfMean: number; periodS: number | null };
  'condition-touches':
    | { mode: 'spray' | 'pulsed-spray'; rateHz: number }
    | { mode: 'short-circuit'; shareOfShorts: number };
  'condition-spatter': { meanA: number; sdA: number; mostA: number; overMeanCurrent: number };
  'condition-regularity':
    | { mode: 'short-circuit'; index: number }
    | { mode: 'pulsed-spray'; clockCv: number }
    | { mode: 'spray'; spreadShare: number };
  'condition-cold-lap': { signs: ColdSign[] };
  'condition-usual': { of: ConditionName; mode: Mode | null };
  'condition-not-by-sound': Nothing;
  'condition-no-current': Nothing;
  'condition-no-voltage': Nothing;
  'condition-no-mode': Nothing;
  'condition-no-fusion': Nothing;
}
