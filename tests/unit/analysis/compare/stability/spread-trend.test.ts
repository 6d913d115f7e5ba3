import { describe, expect, it } from 'vitest';
import { spreadOf, trendOf } from '../../../../../src/analysis/compare/stability/index.js';

describe('spread and trend', () => {
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
});
