import { describe, expect, it } from 'vitest';
import { binFeatures } from '../../../../../src/lab/train/fit/binning.js';
import { growTree } from '../../../../../src/lab/train/fit/grow-tree.js';

const PLAIN = { depth: 1, leastHessian: 0.5, ridge: 1, rate: 1 };

/** Squared-error rows: gradient −y, second derivative 1. */
function grow(rows: number[][], y: number[], options: Partial<typeof PLAIN> = {}) {
  const data = binFeatures(rows.map((row) => Float64Array.from(row)));
  return growTree(
    data,
    Float64Array.from(y, (value) => -value),
    new Float64Array(y.length).fill(1),
    Int32Array.from(y, (_, i) => i),
    rows[0]!.map((_, f) => f),
    { ...PLAIN, ...options },
  );
}

describe('growTree', () => {
  it('finds the split and the leaves of a case solved by hand', () => {
    // y = −1, −1, 2, 2 at x = 1, 2, 3, 4. Best cut 2.5: G²/(H+1) = 4/3 + 16/3 against 4/5 unsplit;
    // cut 1.5 gives 1/2 + 9/4, cut 3.5 gives 0 + 4/2. Leaves ΣY/(n+1): −2/3 and 4/3; root 2/5.
    // Rejects leaves without the ridge (−1 and 2) and a gain that forgets the parent.
    const tree = grow([[1], [2], [3], [4]], [-1, -1, 2, 2]);
    expect(tree.feature).toEqual([0, -1, -1]);
    expect(tree.threshold[0]).toBe(2.5);
    expect(tree.value[0]).toBeCloseTo(0.4, 4);
    expect(tree.value[1]).toBeCloseTo(-2 / 3, 4);
    expect(tree.value[2]).toBeCloseTo(4 / 3, 4);
  });

  it('asks the feature that tells more', () => {
    // Feature 0 is noise to y, feature 1 separates it. Rejects taking the first split found.
    const tree = grow(
      [
        [1, 5],
        [2, 9],
        [1, 9],
        [2, 5],
      ],
      [-1, 1, 1, -1],
    );
    expect(tree.feature[0]).toBe(1);
    expect(tree.threshold[0]).toBe(7);
  });

  it('sends absent values to the side that they resemble', () => {
    // Absent rows have the y of the high side, then of the low side. Rejects a fixed side.
    const rows = [[1], [2], [3], [4], [Number.NaN], [Number.NaN]];
    expect(grow(rows, [-1, -1, 1, 1, 1, 1]).absentLeft[0]).toBe(false);
    expect(grow(rows, [-1, -1, 1, 1, -1, -1]).absentLeft[0]).toBe(true);
  });

  it('makes no leaf lighter than allowed and no split without gain', () => {
    // With at least 2 rows a side only the cut at 2.5 is left, though 1.5 would gain more.
    expect(grow([[1], [2], [3], [4]], [9, 0, 0, 0], { leastHessian: 2 }).threshold[0]).toBe(2.5);
    expect(grow([[1], [2], [3], [4]], [0, 0, 0, 0]).feature).toEqual([-1]);
  });

  it('scales leaves by the rate', () => {
    expect(grow([[1], [2]], [3, 3], { rate: 0.1 }).value[0]).toBeCloseTo((0.1 * 6) / 3, 4);
  });
});
