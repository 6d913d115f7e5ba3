import type { Mode } from '../core/index.js';
import type { Gas } from './gas.js';

/** Letters of ISO 4063:2023 Annex A for the transfer mode, from a secondary copy (F2). */
export const MODE_LETTERS: Readonly<Record<Mode, string>> = {
  'short-circuit': 'D',
  globular: 'G',
  spray: 'S',
  'pulsed-spray': 'P',
};

/** Buried arc: a letter of the standard that this tool never gives as a verdict. */
export const BURIED_ARC_LETTER = 'B';

/** Open short name of the process: 131 in inert gas, 135 in active gas, 13 where gas is unknown. */
export function processName(mode: Mode, gas: Gas | null): string {
  const letter = MODE_LETTERS[mode];
  if (gas === null) return `ISO 4063-13-${letter}`;
  const inert = gas.symbol.startsWith('I');
  return `ISO 4063-${inert ? 131 : 135}-${letter}`;
}
