import { describe, expect, it } from 'vitest';
import {
  intervalsOf,
  irregularityIndex,
  peakBackground,
  peakBackgroundBlocks,
  peakCounts,
  poolRatio,
  spreadOf,
  spreadProductIndex,
  transferIndices,
  trendOf,
} from '../../../../../src/analysis/compare/stability/index.js';

describe('irregularity index', () => {
  // Hand calculation: shorts 1, 2, 3 have mean 2 and population sd √(2/3); arc times are the same
  // doubled, so both parts are √(2/3)/2 and the index is √(2/3). Rejects: a product of the parts.
  it('adds the two coefficients of variation', () => {
    expect(irregularityIndex([1, 2, 3], [2, 4, 6])).toBeCloseTo(Math.sqrt(2 / 3), 12);
  });

  it('is 0 for a clock and null where there is no spread to speak of', () => {
    expect(irregularityIndex([2, 2, 2], [4, 4, 4])).toBe(0);
    expect(irregularityIndex([], [4, 4, 4])).toBeNull();
    expect(irregularityIndex([1, 2, Number.NaN], [4, 4, 4])).toBeNull();
  });
});

describe('product of the spreads', () => {
  // Hand calculation: every list has population sd √(2/3) or twice that; the product is (2/3)²·4.
  it('multiplies the four standard deviations', () => {
    const index = spreadProductIndex({
      arcTimesS: [1, 2, 3],
      shortTimesS: [1, 2, 3],
      arcCurrentsA: [2, 4, 6],
      shortCurrentsA: [2, 4, 6],
    });
    expect(index).toBeCloseTo((2 / 3) ** 2 * 4, 12);
  });
});

describe('peak and background', () => {
  // Hand calculation: mean 4; above it 8 and 10; at or below 0, 1, 1. Rejects: a median split.
  it('splits at the mean', () => {
    expect(peakBackground([0, 1, 1, 8, 10])).toEqual({
      mean: 4,
      peak: 9,
      background: expect.closeTo(2 / 3, 12),
      min: 0,
    });
  });

  it('answers a constant with itself and nothing with null', () => {
    expect(peakBackground([5, 5])).toEqual({ mean: 5, peak: 5, background: 5, min: 5 });
    expect(peakBackground([])).toBeNull();
    expect(peakBackground([1, Number.NaN])).toBeNull();
  });

  it('leaves out a last block that is not full', () => {
    expect(peakBackgroundBlocks(new Float64Array(5).fill(3), 10, 0.2)).toHaveLength(2);
  });

  // Hand calculation on current 100 background, 300 peak, mean 150 and voltage 20 background, 5 least.
  it('forms the ratios', () => {
    const current = { mean: 150, peak: 300, background: 100, min: 90 };
    const voltage = { mean: 18, peak: 24, background: 20, min: 5 };
    expect(transferIndices(current, voltage)).toEqual({
      peakOverMean: 2,
      backgroundDeficit: expect.closeTo(1 / 3, 12),
      voltageDip: 0.75,
    });
    expect(transferIndices({ ...current, mean: 0 }, voltage)).toBeNull();
  });

  it('counts re-ignition peaks by bin', () => {
    expect([...peakCounts([31, 24.2, 24.9, Number.NaN], 1)]).toEqual([
      [24, 2],
      [31, 1],
    ]);
  });
});

describe('small ones', () => {
  it('takes intervals, and none from fewer than two times', () => {
    expect([...intervalsOf([1, 3, 6])]).toEqual([2, 3]);
    expect(intervalsOf([1])).toHaveLength(0);
  });

  it('needs three values for a spread and five for a trend', () => {
    expect(spreadOf([1, 2])).toBeNull();
    expect(trendOf([1, 2, 3, 4], [1, 2, 3, 4])).toBeNull();
    expect(trendOf([1, 2, 3, 4, 5], [1, 2, 3, 4, Number.NaN])).toBeNull();
    expect(trendOf([1, 1, 1, 1, 1], [1, 2, 3, 4, 5])).toBeNull();
  });

  // A straight line and a flat one. Rejects: "clear" from the slope alone.
  it('calls a straight rise clear and a flat run not', () => {
    const times = Array.from({ length: 20 }, (_, i) => i);
    expect(
      trendOf(
        times,
        times.map((t) => 3 + 2 * t),
      ),
    ).toMatchObject({ slopePerS: 2, clear: true });
    expect(
      trendOf(
        times,
        times.map(() => 7),
      ),
    ).toMatchObject({ slopePerS: 0, clear: false });
  });

  it('relates the shorts to the pool', () => {
    expect(poolRatio(60, 60)).toBe(1);
    expect(poolRatio(60, 0)).toBeNull();
  });
});
