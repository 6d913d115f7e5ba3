import { describe, expect, it } from 'vitest';
import { RateTally } from '../../../src/judge/rate-tally.js';

function tally(...rates: number[]): RateTally {
  const made = new RateTally();
  for (const rate of rates) made.add(rate);
  return made;
}

describe('RateTally', () => {
  it('is the median of the windows that agree, whatever the stray ones say', () => {
    // 99, 100, 101 agree; 50 and 200 are octave errors. Rejects the mean of all (110).
    const found = tally(99, 200, 100, 50, 101).rate();
    expect(found?.rateHz).toBeCloseTo(100, 12);
    expect(found?.share).toBeCloseTo(0.6, 12);
  });

  it('is the same rate when the agreeing windows straddle a bin edge', () => {
    // Bins are 1/24 octave: 4·2^(k/24). An edge lies at 4·2^(111/24) = 98.70 Hz; 98 and 99.4 are on
    // either side. Rejects counting the fullest single bin.
    const found = tally(98, 99.4, 98, 99.4, 300).rate();
    expect(found?.rateHz).toBeCloseTo(98.7, 1);
    expect(found?.share).toBeCloseTo(0.8, 12);
  });

  it('hardly moves for one window more or less at an edge', () => {
    // Median by hand: (112 + 113) / 2. Rejects a mean, which the slow window would pull to 110.4.
    expect(tally(102, 112, 113, 114.6).rate()?.rateHz).toBeCloseTo(112.5, 12);
  });

  it('lets counts of onsets stand in only where there are too few lines', () => {
    const made = new RateTally();
    for (const rate of [34, 34, 34, 34]) made.add(rate, false);
    expect(made.rate()?.rateHz).toBe(34);
    for (const rate of [30, 30, 30]) made.add(rate);
    // Rejects one pot for both: its median is 34.
    expect(made.rate()?.rateHz).toBe(30);
    expect(made.windows).toBe(7);
  });

  it('merged from two parts is that of all windows', () => {
    const parts = tally(120, 121);
    parts.merge(tally(119, 60));
    expect(parts.rate()).toEqual(tally(120, 121, 119, 60).rate());
    expect(parts.windows).toBe(4);
  });

  it('is null without a window, and takes no rate out of range', () => {
    expect(tally().rate()).toBeNull();
    expect(tally(1, 5000, Number.NaN).rate()).toBeNull();
  });
});
