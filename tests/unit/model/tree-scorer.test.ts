import { describe, expect, it } from 'vitest';
import { explain, score, type Tree, type TreeScorer } from '../../../src/model/index.js';

/** Root asks feature 0 at 10; its right child asks feature 1 at 5. Leaves 1, 3, 4. */
const TREE: Tree = {
  feature: [0, -1, 1, -1, -1],
  threshold: [10, 0, 5, 0, 0],
  left: [1, -1, 3, -1, -1],
  right: [2, -1, 4, -1, -1],
  absentLeft: [false, true, true, true, true],
  value: [0.5, -1, 2, 1.5, 3],
};
const STUMP: Tree = {
  feature: [1, -1, -1],
  threshold: [0, 0, 0],
  left: [1, -1, -1],
  right: [2, -1, -1],
  absentLeft: [true, true, true],
  value: [0.1, -0.2, 0.7],
};
const scorer: TreeScorer = { kind: 'trees', bias: [0.25, -1], trees: [[TREE, STUMP], [STUMP]] };
const at = (...values: number[]): Float64Array => Float64Array.from(values);

describe('scores of trees', () => {
  it('adds the leaves that a vector reaches to the bias', () => {
    // (12, 4): right at 12 > 10, left at 4 ≤ 5, leaf 1.5; the stump gives 0.7. 0.25 + 1.5 + 0.7.
    // Rejects adding the values of inner nodes, and leaving the bias out.
    expect(score(scorer, at(12, 4))[0]).toBeCloseTo(2.45, 12);
    expect(score(scorer, at(12, 4))[1]).toBeCloseTo(-0.3, 12);
  });

  it('goes left at the threshold itself', () => {
    expect(score(scorer, at(10, 9))[0]).toBeCloseTo(0.25 - 1 + 0.7, 12);
  });

  it('sends an absent value where the node says, not by comparison', () => {
    // NaN ≤ 10 is false, so a plain comparison would go right everywhere: at feature 1 that is wrong.
    expect(score(scorer, at(Number.NaN, 9))[0]).toBeCloseTo(0.25 + 3 + 0.7, 12);
    expect(score(scorer, at(12, Number.NaN))[0]).toBeCloseTo(0.25 + 1.5 - 0.2, 12);
  });
});

describe('what each feature added', () => {
  it('follows the path by hand', () => {
    // (12, 4) in class 0: feature 0 moves 0.5 → 2; feature 1 moves 2 → 1.5, and 0.1 → 0.7 in the stump.
    expect([...explain(scorer, at(12, 4), 0)]).toEqual([1.5, expect.closeTo(0.1, 12)]);
  });

  it('adds up to the score less bias and roots, absent values too', () => {
    // Rejects giving a step to the feature asked at the child, and dropping steps of absent values.
    for (const values of [at(12, 4), at(3, -1), at(Number.NaN, 6), at(11, Number.NaN)]) {
      const total = explain(scorer, values, 0).reduce((sum, one) => sum + one, 0);
      expect(total).toBeCloseTo(score(scorer, values)[0]! - 0.25 - (0.5 + 0.1), 12);
    }
  });
});

describe('scores of a line', () => {
  const linear = {
    kind: 'linear' as const,
    mean: [10, 0],
    deviation: [2, 1],
    bias: [0.5],
    weight: [[3, -1]],
  };

  it('standardises, cuts at four deviations and takes absent as the mean', () => {
    // (14 − 10)/2 = 2 and 1: 0.5 + 6 − 1. A value of 1000 counts as z = 4: 0.5 + 12.
    expect(score(linear, at(14, 1))[0]).toBeCloseTo(5.5, 12);
    expect(score(linear, at(1000, 0))[0]).toBeCloseTo(12.5, 12);
    expect(score(linear, at(Number.NaN, Number.NaN))[0]).toBeCloseTo(0.5, 12);
  });

  it('explains the score less the bias', () => {
    expect([...explain(linear, at(14, 1), 0)]).toEqual([6, -1]);
  });
});
