import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { fitNovelty, inverseCholesky } from '../../../../../src/lab/train/fit/fit-novelty.js';
import type { Rows } from '../../../../../src/lab/train/fit/rows.js';
import { centreAndWidth } from '../../../../../src/lab/train/fit/spread.js';
import { noveltyDistance } from '../../../../../src/model/index.js';

function cloud(count: number): Rows {
  const random = createRandom('cloud');
  const values = Array.from({ length: count }, (_, i) =>
    Float64Array.of(random.normal(i % 2 === 0 ? 0 : 6), random.normal()),
  );
  return {
    values,
    label: Uint8Array.from(values, (_, i) => i % 2),
    weight: new Float64Array(count).fill(1),
    run: new Int32Array(count),
  };
}

describe('inverseCholesky', () => {
  it('inverts the factor of a 2×2 matrix worked by hand', () => {
    // [[4, 2], [2, 5]] = L·Lᵀ with L = [[2, 0], [1, 2]], so L⁻¹ = [[1/2, 0], [−1/4, 1/2]].
    // Rejects a lost sign below the diagonal, the inverse of the matrix itself, and the upper triangle.
    const rows = [Float64Array.of(4, 0), Float64Array.of(2, 5)];
    expect(inverseCholesky(rows)).toEqual([0.5, -0.25, 0.5]);
  });

  it('makes L⁻¹·A·L⁻ᵀ the unit matrix for three dimensions', () => {
    const a = [
      [6, 2, 1],
      [2, 5, -1],
      [1, -1, 4],
    ];
    const flat = inverseCholesky(a.map((row) => Float64Array.from(row)));
    const inverse = (i: number, j: number): number => (j > i ? 0 : flat[(i * (i + 1)) / 2 + j]!);
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        let sum = 0;
        for (let k = 0; k < 3; k++)
          for (let l = 0; l < 3; l++) sum += inverse(i, k) * a[k]![l]! * inverse(j, l);
        expect(sum).toBeCloseTo(i === j ? 1 : 0, 12);
      }
  });
});

describe('fitNovelty', () => {
  it('puts the limit where the share that is kept lies within', () => {
    // Rejects a limit from the wrong tail or from all distances squared.
    const rows = cloud(400);
    const novelty = fitNovelty(rows, 2, 0.9);
    const within = rows.values.filter((row) => noveltyDistance(novelty, row) <= novelty.limit);
    expect(within.length).toBeGreaterThanOrEqual(359);
    expect(within.length).toBeLessThanOrEqual(361);
  });

  it('measures from the nearest class, so that the middle between two is far', () => {
    // Classes at (0, 0) and (6, 0): no row lies in their middle, 3 deviations from both. In units of the
    // common spread (√(1 + 3²) = 3.2) that is 0.95 against √(0.9·0.1 + 0.1) = 0.44 with the shrinkage,
    // over √2 for two features: 1.5.
    // Rejects the distance to the mean of everything.
    const novelty = fitNovelty(cloud(400), 2, 0.999);
    const middle = noveltyDistance(novelty, Float64Array.of(3, 0));
    expect(noveltyDistance(novelty, Float64Array.of(0, 0))).toBeLessThan(0.3);
    expect(noveltyDistance(novelty, Float64Array.of(6, 0))).toBeLessThan(0.3);
    expect(middle).toBeGreaterThan(1.2);
  });

  it('knows no centre for a class without rows', () => {
    // Rejects a stand-in centre at the median of all rows, which made (3, 0) known ground.
    const novelty = fitNovelty(cloud(400), 4, 0.999);
    expect(novelty.centres).toHaveLength(2);
    expect(noveltyDistance(novelty, Float64Array.of(3, 0))).toBeGreaterThan(1.2);
  });
});

describe('centreAndWidth', () => {
  it('takes the median, and half the width from the 16th to the 84th percentile', () => {
    // 0…100: median 50, percentiles 16 and 84 (type 7 on 101 points are exact), half of 68 is 34.
    const rows = Array.from({ length: 101 }, (_, i) => Float64Array.of(i, 7, Number.NaN));
    const { centre, deviation } = centreAndWidth(rows);
    expect(centre).toEqual([50, 7, 0]);
    // A constant, and a feature never shown, get the floor and divide nothing by 0.
    expect(deviation).toEqual([34, 0.001, 0.001]);
  });
});
