import type { Random } from '../../core/index.js';

/** Log-uniform in [low, high) in this share of the draws, 0 in the others. */
export function sometimes(random: Random, share: number, low: number, high: number): number {
  return random.next() < share ? random.logUniform(low, high) : 0;
}
