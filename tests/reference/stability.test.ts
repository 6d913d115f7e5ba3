import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { wilson } from '../../src/analysis/compare/index.js';
import {
  normalCdf,
  normalQuantile,
  spreadOf,
  trendOf,
} from '../../src/analysis/compare/stability/index.js';

/** Made by fixtures/reference/stability.py with SciPy 1.10.1. */
const reference = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/stability.json', import.meta.url), 'utf8'),
);

describe('stability figures against SciPy', () => {
  // Rejects: the sample deviation (n − 1), a MAD scaled to sigma, a mean in place of the median.
  it('spread: mean, sd, cv, median, mad', () => {
    const spread = spreadOf(reference.intervals)!;
    for (const key of ['mean', 'sd', 'cv', 'median', 'mad'] as const) {
      expect(spread[key]).toBeCloseTo(reference.spread[key], 12);
    }
  });

  // scipy.stats.theilslopes. Rejects: least squares, an interval that forgets ties.
  it.each(['', 'Tied'])('trend%s: slope and interval', (suffix) => {
    const values = suffix === '' ? reference.values : reference.tied;
    const trend = trendOf(reference.times, values)!;
    const wanted = reference[`trend${suffix}`];
    expect(trend.slopePerS).toBeCloseTo(wanted.slope, 10);
    expect(trend.lowPerS).toBeCloseTo(wanted.low, 10);
    expect(trend.highPerS).toBeCloseTo(wanted.high, 10);
  });

  it('normal distribution and its inverse', () => {
    for (const [i, z] of (reference.z as number[]).entries()) {
      const wanted = reference.cdf[i] as number;
      expect(Math.abs(normalCdf(z) - wanted)).toBeLessThan(1e-10);
      if (z > -6 && z < 6) expect(normalQuantile(wanted)).toBeCloseTo(z, 5);
    }
  });

  it('Wilson interval of 7 in 20', () => {
    const z = normalQuantile(0.975);
    const { low, high } = wilson({ share: 7 / 20, looks: 20 }, z);
    expect([low, high]).toEqual(reference.wilson7of20.map((one: number) => expect.closeTo(one, 8)));
  });
});
