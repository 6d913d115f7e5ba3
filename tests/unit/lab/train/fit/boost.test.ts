import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { BOOST_DEFAULTS, boostTrees } from '../../../../../src/lab/train/fit/boost.js';
import type { Rows } from '../../../../../src/lab/train/fit/rows.js';
import { score } from '../../../../../src/model/index.js';

const OPTIONS = { ...BOOST_DEFAULTS, rounds: 40, depth: 2, leastHessian: 1, ridge: 1 };

/** Points in the plane, class by quadrant: no single cut separates them. */
function quadrants(count: number, seed: string): Rows {
  const random = createRandom(seed);
  const values = Array.from({ length: count }, () =>
    Float64Array.of(random.uniform(-1, 1), random.uniform(-1, 1)),
  );
  return {
    values,
    label: Uint8Array.from(values, ([x, y]) => (x! > 0 ? 1 : 0) + (y! > 0 ? 2 : 0)),
    weight: new Float64Array(count).fill(1),
    run: Int32Array.from(values, (_, i) => i),
  };
}

const best = (scores: Float64Array): number => scores.indexOf(Math.max(...scores));

describe('boostTrees', () => {
  it('separates four quadrants on points it has not seen', () => {
    // Chance is 25 %, and a single cut gives at most 50 %. Rejects trees that are not added up,
    // scores of the wrong class, and a learner that only remembers.
    const scorer = boostTrees(quadrants(600, 'learn'), 4, OPTIONS, createRandom('b'));
    const fresh = quadrants(400, 'fresh');
    const hits = fresh.values.filter((row, i) => best(score(scorer, row)) === fresh.label[i]);
    expect(hits.length / 400).toBeGreaterThan(0.93);
  });

  it('with one score gives log-odds of class 1 against class 0', () => {
    // Class 1 holds 75 % right of 0 and 25 % left of it: log-odds +ln 3 and −ln 3 once classes weigh
    // the same. Rejects a flipped sign and probabilities given as scores.
    const rows: Rows = {
      values: Array.from({ length: 800 }, (_, i) => Float64Array.of(i % 2 === 0 ? 1 : -1)),
      label: Uint8Array.from({ length: 800 }, (_, i) => (i % 8 < 6 === (i % 2 === 0) ? 1 : 0)),
      weight: new Float64Array(800).fill(1),
      run: new Int32Array(800),
    };
    const share = (side: number) => {
      const own = rows.values.flatMap(([x], i) => (x === side ? [rows.label[i]!] : []));
      return own.reduce((sum, one) => sum + one, 0) / own.length;
    };
    expect([share(1), share(-1)]).toEqual([0.75, 0.25]);
    const options = { ...OPTIONS, rounds: 150, rowShare: 1, featureShare: 1 };
    const scorer = boostTrees(rows, 1, options, createRandom('b'));
    expect(score(scorer, Float64Array.of(1))[0]).toBeCloseTo(Math.log(3), 1);
    expect(score(scorer, Float64Array.of(-1))[0]).toBeCloseTo(-Math.log(3), 1);
  });

  it('is the same for the same seed', () => {
    const again = () => boostTrees(quadrants(200, 'learn'), 4, OPTIONS, createRandom('b'));
    expect(again()).toEqual(again());
  });
});
