import type { Mode } from '../core/index.js';
import { type Made, message } from '../messages/index.js';
import { isOutOfPosition } from './positions.js';
import type { Setup } from './setup-schema.js';

/** Three lines on where a mode may be used; said where plate or position is stated, else none. */
export function sayModeUse(mode: Mode, { plateMm, position, wireMaterial }: Setup): Made[] {
  if (plateMm === null && position === null) return [];
  return [
    message('mode-positions', { mode, aluminium: wireMaterial === 'aluminium' }),
    message('mode-good-for', { mode }),
    message('mode-bad-for', { mode }),
  ];
}

/** The warning of conventional spray out of position; null for aluminium, pulsed spray and the flat positions. */
export function warnOfPosition(
  modes: readonly Mode[],
  { position, wireMaterial }: Setup,
): Made | null {
  if (position === null || !isOutOfPosition(position) || !modes.includes('spray')) return null;
  if (wireMaterial === 'aluminium') return null;
  const where = position as Exclude<typeof position, 'flat' | 'horizontal'>;
  return message('spray-out-of-position', { position: where });
}
