import { median } from './statistics.js';

/**
 * Median over a sliding span of `2·half + 1` values, shortened at the edges; the usual floor under
 * spectral lines. Same length as the input.
 */
export function runningMedian(values: Float64Array, half: number): Float64Array {
  return Float64Array.from(values, (_, i) =>
    median(values.subarray(Math.max(0, i - half), Math.min(values.length, i + half + 1))),
  );
}
