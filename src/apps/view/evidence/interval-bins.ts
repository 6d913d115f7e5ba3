import type { IntervalCounts } from './types.js';

/** Bins of intervals: a tenth of a decade from 0.5 ms to 2 s. */
const FROM_S = 0.0005;
const RATIO = 10 ** (1 / 20);
export const INTERVAL_BINS = 72;

/** Adds one interval to counts of {@link INTERVAL_BINS} bins; what is shorter or longer is left out. */
export function addInterval(counts: Float64Array, seconds: number): void {
  const bin = Math.floor(Math.log(seconds / FROM_S) / Math.log(RATIO));
  if (bin >= 0 && bin < INTERVAL_BINS) counts[bin] = counts[bin]! + 1;
}

/** The counts with their axis; null below ten intervals, which show no shape. */
export function intervalCounts(of: string, counts: Float64Array): IntervalCounts | null {
  const total = counts.reduce((sum, one) => sum + one, 0);
  return total < 10 ? null : { of, total, fromS: FROM_S, ratio: RATIO, counts };
}
