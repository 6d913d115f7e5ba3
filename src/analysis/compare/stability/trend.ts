import { median } from '../../../dsp/index.js';
import { normalQuantile } from './normal.js';

/** A straight trend, in units of the values per second. */
export interface Trend {
  slopePerS: number;
  /** Interval of the slope at the level asked for. */
  lowPerS: number;
  highPerS: number;
  /** True where the interval leaves 0 out: more than chance. */
  clear: boolean;
}

/** Slopes of all pairs are formed: more points than this are for the caller to thin out. */
const MOST_POINTS = 2000;

/**
 * Theil–Sen slope with Sen's interval (the median of the slopes of all pairs; Sen, JASA 63 (1968)
 * 1379). Values close in time must be independent: thin overlapping windows first. Null with fewer
 * than five points, more than 2000, a value that is not finite, or times that never differ.
 */
export function trendOf(
  timesS: ArrayLike<number>,
  values: ArrayLike<number>,
  level = 0.95,
): Trend | null {
  const count = timesS.length;
  if (count !== values.length || count < 5 || count > MOST_POINTS) return null;
  const slopes: number[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const dt = timesS[j]! - timesS[i]!;
      if (dt !== 0) slopes.push((values[j]! - values[i]!) / dt);
    }
  }
  if (slopes.length === 0 || !slopes.every(Number.isFinite)) return null;
  slopes.sort((a, b) => a - b);
  const half = normalQuantile((1 + level) / 2) * Math.sqrt(variance(timesS, values));
  const at = (rank: number): number => slopes[Math.max(0, Math.min(slopes.length - 1, rank))]!;
  const lowPerS = at(Math.round((slopes.length - half) / 2) - 1);
  const highPerS = at(Math.round((slopes.length + half) / 2));
  return { slopePerS: median(slopes), lowPerS, highPerS, clear: lowPerS > 0 || highPerS < 0 };
}

/** Variance of Kendall's score, less what ties take. */
function variance(timesS: ArrayLike<number>, values: ArrayLike<number>): number {
  const term = (n: number): number => n * (n - 1) * (2 * n + 5);
  const ties = (list: ArrayLike<number>): number => {
    const counts = new Map<number, number>();
    for (const one of Array.from(list)) counts.set(one, (counts.get(one) ?? 0) + 1);
    return [...counts.values()].reduce((sum, n) => sum + term(n), 0);
  };
  return Math.max(0, (term(values.length) - ties(timesS) - ties(values)) / 18);
}
