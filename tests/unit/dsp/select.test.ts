import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../src/core/index.js';
import { selectRank } from '../../../src/dsp/index.js';

describe('selectRank', () => {
  it('gives what sorting gives, for every rank, with ties', () => {
    // Rejects a partition that loses or doubles values equal to the pivot.
    const random = createRandom(440);
    for (let n = 1; n < 40; n++) {
      const values = Float64Array.from({ length: n }, () => random.integer(0, 9));
      const sorted = values.slice().sort();
      for (let rank = 0; rank < n; rank++)
        expect(selectRank(values.slice(), n, rank)).toBe(sorted[rank]);
    }
  });

  it('looks at the first `count` values only', () => {
    expect(selectRank(Float64Array.of(5, 3, 9, -100), 3, 0)).toBe(3);
  });
});
