import { describe, expect, it } from 'vitest';
import { cohenKappa, fleissKappa } from '../../../../../src/lab/evaluate/score/kappa.js';
import { maximumMatching } from '../../../../../src/lab/evaluate/score/matching.js';
import { countSpans, type Span } from '../../../../../src/lab/evaluate/score/spans.js';

const near = (a: number, b: number) => Math.abs(a - b) <= 0.5;

describe('maximumMatching', () => {
  it('finds the pairs that greedy pairing misses', () => {
    // 1.0 fits both 0.6 and 1.4; 0.2 fits only 0.6. Taking the first that fits (1.0 with 0.6) leaves 0.2
    // alone: 1 pair. The most is 2.
    expect(maximumMatching([1.0, 0.2], [0.6, 1.4], near)).toBe(2);
  });

  it('uses every item once', () => {
    expect(maximumMatching([1, 1.1, 1.2], [1], near)).toBe(1);
    expect(maximumMatching([], [1], near)).toBe(0);
    expect(maximumMatching([1], [3], near)).toBe(0);
  });
});

describe('countSpans', () => {
  const rules = { overlap: 0.5, toleranceS: 0.5, silent: '?' };
  const spans = (...list: [number, number, string][]): Span[] =>
    list.map(([startS, endS, label]) => ({ startS, endS, label }));

  it('counts time, segments and changes of a case worked by hand', () => {
    // Truth a [0, 4), b [4, 10). Found a [0, 4.4), ? [4.4, 5), b [5, 8), a [8, 10).
    // Right: a 4 s, b 3 s. Segments: a 4/4.4, b 3/6 = 0.5 both match; the last a does not; ? claims nothing.
    // Changes: truth 4; found 4.4, 5, 8; one pair.
    const found = spans([0, 4.4, 'a'], [4.4, 5, '?'], [5, 8, 'b'], [8, 10, 'a']);
    expect(countSpans(spans([0, 4, 'a'], [4, 10, 'b']), found, rules)).toEqual({
      labelledS: 10,
      rightS: 7,
      truths: 2,
      founds: 3,
      matches: 2,
      truthEdges: 1,
      foundEdges: 3,
      edgeMatches: 1,
    });
  });

  it('judges nothing outside the labelled time', () => {
    // Labelled [2, 4) and [6, 8) of a found b from 0 to 5 and c after. Rejects counting the found parts
    // and the change at 5, which nobody judged.
    const found = spans([0, 5, 'b'], [5, 20, 'c']);
    expect(countSpans(spans([2, 4, 'b'], [6, 8, 'b']), found, rules)).toMatchObject({
      labelledS: 4,
      rightS: 2,
      truths: 2,
      founds: 2,
      matches: 1,
      truthEdges: 0,
      foundEdges: 0,
    });
  });

  it('joins neighbours of one label, on both sides', () => {
    // Rejects a miss for each person who cut one segment into two.
    const counts = countSpans(
      spans([0, 1, 'a'], [1.02, 2, 'a']),
      spans([0, 0.5, 'a'], [0.5, 2, 'a']),
      rules,
    );
    expect(counts).toMatchObject({
      truths: 1,
      founds: 1,
      matches: 1,
      truthEdges: 0,
      foundEdges: 0,
    });
  });
});

describe('agreement beyond chance', () => {
  it("gives Cohen's kappa of a table worked by hand", () => {
    // Both yes 20, first only 5, second only 10, both no 15: observed 35/50 = 0.7; expected
    // 25/50·30/50 + 25/50·20/50 = 0.5; kappa (0.7 − 0.5)/(1 − 0.5) = 0.4.
    const pair = (a: string, b: string, count: number) =>
      Array.from({ length: count }, () => [a, b] as const);
    const pairs = [
      ...pair('y', 'y', 20),
      ...pair('y', 'n', 5),
      ...pair('n', 'y', 10),
      ...pair('n', 'n', 15),
    ];
    const found = cohenKappa(pairs)!;
    expect(found.observed).toBeCloseTo(0.7, 12);
    expect(found.kappa).toBeCloseTo(0.4, 12);
  });

  it("gives Fleiss' kappa of ten subjects and fourteen raters", () => {
    // From memory of the worked example in encyclopaedias for this measure: mean agreement 0.378,
    // chance 0.213, kappa 0.210. Rejects Cohen's chance term and agreement with oneself counted.
    const table = [
      [0, 0, 0, 0, 14],
      [0, 2, 6, 4, 2],
      [0, 0, 3, 5, 6],
      [0, 3, 9, 2, 0],
      [2, 2, 8, 1, 1],
      [7, 7, 0, 0, 0],
      [3, 2, 6, 3, 0],
      [2, 5, 3, 2, 2],
      [6, 5, 2, 1, 0],
      [0, 2, 2, 3, 7],
    ];
    const units = table.map((row) =>
      row.flatMap((n, k) => new Array<string>(n).fill(`label ${k}`)),
    );
    const found = fleissKappa(units)!;
    expect(found.observed).toBeCloseTo(0.378, 3);
    expect(found.kappa).toBeCloseTo(0.21, 3);
  });

  it('is undefined where all gave one label, and null where nothing was judged twice', () => {
    // Rejects 0/0 as NaN, and full marks for labellers who never chose.
    expect(cohenKappa([['a', 'a']])?.kappa).toBeNull();
    expect(fleissKappa([['a', 'a']])?.kappa).toBeNull();
    expect(cohenKappa([])).toBeNull();
    expect(fleissKappa([['a'], ['b']])).toBeNull();
  });
});
