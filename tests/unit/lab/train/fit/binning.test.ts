import { describe, expect, it } from 'vitest';
import { ABSENT_BIN, BIN_LIMIT, binFeatures } from '../../../../../src/lab/train/fit/binning.js';

const column = (values: number[]): Float64Array[] => values.map((value) => Float64Array.of(value));

describe('binFeatures', () => {
  it('cuts half way between neighbours and keeps equal values together', () => {
    // Four values, two distinct: only one cut is possible, (1 + 3) / 2 = 2 (hand calculation).
    // Rejects cuts on the values themselves, where a rounding difference moves a row.
    const { edges, bins } = binFeatures(column([1, 3, 1, 3]));
    expect([...edges[0]!]).toEqual([2]);
    expect([...bins[0]!]).toEqual([0, 1, 0, 1]);
  });

  it('gives absent values a bin of their own and no say in the cuts', () => {
    // Rejects treating NaN as a small or a large number.
    const { edges, bins } = binFeatures(column([1, Number.NaN, 3]));
    expect([...edges[0]!]).toEqual([2]);
    expect([...bins[0]!]).toEqual([0, ABSENT_BIN, 1]);
  });

  it('makes no cut where nothing differs or nothing is there', () => {
    expect(binFeatures(column([5, 5, 5])).edges[0]).toHaveLength(0);
    expect(binFeatures(column([Number.NaN, Number.NaN])).edges[0]).toHaveLength(0);
    expect(binFeatures([]).edges).toEqual([]);
  });

  it('fills the bins evenly, at most as many as the limit', () => {
    // 640 distinct values over 64 bins are 10 a bin. Rejects bins of equal width (values are squares).
    const { edges, bins } = binFeatures(column(Array.from({ length: 640 }, (_, i) => i * i)));
    expect(edges[0]).toHaveLength(BIN_LIMIT - 1);
    const counts = new Array<number>(BIN_LIMIT).fill(0);
    for (const bin of bins[0]!) counts[bin] = counts[bin]! + 1;
    expect(new Set(counts)).toEqual(new Set([10]));
  });
});
