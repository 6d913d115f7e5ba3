import { createRandom, type Random } from '../../core/index.js';
import { mean, standardDeviation } from '../../dsp/index.js';

const ROUNDS = 1000;

/**
 * Standard error of the mean of a series whose neighbours may depend on each other, by the moving
 * block bootstrap (Künsch 1989) with blocks of about the cube root of the length. NaN with fewer
 * than five values. The same seed gives the same answer.
 */
export function meanError(series: Float64Array, seed: number | string): number {
  if (series.length < 5) return Number.NaN;
  const random = createRandom(seed);
  const block = Math.max(1, Math.round(Math.cbrt(series.length)));
  return standardDeviation(
    Float64Array.from({ length: ROUNDS }, () => mean(resampled(series, block, random))),
  );
}

/** A series of the same length from blocks drawn with replacement. */
function resampled(series: Float64Array, block: number, random: Random): Float64Array {
  const drawn = new Float64Array(series.length);
  for (let at = 0; at < drawn.length; at += block) {
    const start = random.integer(0, series.length - block);
    for (let k = 0; k < block && at + k < drawn.length; k++) drawn[at + k] = series[start + k]!;
  }
  return drawn;
}
