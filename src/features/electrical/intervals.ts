import { median } from '../../dsp/index.js';

/** Rate and evenness of a train of events. All NaN with fewer than three events. */
export interface Train {
  /** One over the median interval. */
  rateHz: number;
  /** Standard deviation of the intervals over their mean. */
  cv: number;
  /** The same from the middle half of the intervals (interquartile range / 1.349 / median): deaf to a missed event. */
  robustCv: number;
}

export function trainOf(timesS: readonly number[]): Train {
  if (timesS.length < 3) return { rateHz: Number.NaN, cv: Number.NaN, robustCv: Number.NaN };
  const intervals = new Float64Array(timesS.length - 1);
  let sum = 0;
  let squares = 0;
  for (let k = 0; k < intervals.length; k++) {
    const interval = timesS[k + 1]! - timesS[k]!;
    intervals[k] = interval;
    sum += interval;
    squares += interval * interval;
  }
  const mean = sum / intervals.length;
  const cv = Math.sqrt(Math.max(0, squares / intervals.length - mean * mean)) / mean;
  intervals.sort();
  const middle = median(intervals);
  const quarter = (intervals.length - 1) * 0.25;
  const low = intervals[Math.floor(quarter)]!;
  const high = intervals[Math.ceil(3 * quarter)]!;
  return { rateHz: 1 / middle, cv, robustCv: (high - low) / 1.349 / middle };
}
