import { median } from '../../dsp/index.js';
import { type Trend, trendOf } from './stability/index.js';

/** Rate of the arc's events over the run, window by window; windows may overlap. */
export interface RateTrack {
  timesS: number[];
  ratesHz: number[];
}

/** One median a second, so that overlapping windows do not count twice. Empty seconds are left out. */
export function bySecond({ timesS, ratesHz }: RateTrack): { timesS: number[]; ratesHz: number[] } {
  const seconds = new Map<number, number[]>();
  for (const [i, time] of timesS.entries()) {
    const rate = ratesHz[i];
    if (rate === undefined || !Number.isFinite(rate)) continue;
    const second = Math.floor(time);
    seconds.set(second, [...(seconds.get(second) ?? []), rate]);
  }
  const kept = [...seconds].sort(([a], [b]) => a - b);
  return {
    timesS: kept.map(([second]) => second + 0.5),
    ratesHz: kept.map(([, rates]) => median(rates)),
  };
}

/**
 * Trend of the rate over the run, a median a second; null where it cannot be told. A slope that is so poorly known
 * that its interval spans more than the rate itself over the run says nothing and is left out (own choice).
 */
export function rateTrend(track: RateTrack | null): Trend | null {
  if (track === null) return null;
  const thinned = bySecond(track);
  const trend = trendOf(thinned.timesS, thinned.ratesHz);
  if (trend === null) return null;
  const lengthS = thinned.timesS.at(-1)! - thinned.timesS[0]!;
  const spannedHz = (trend.highPerS - trend.lowPerS) * lengthS;
  return spannedHz <= median(thinned.ratesHz) ? trend : null;
}
