import { describe, expect, it } from 'vitest';
import reference from '../../fixtures/reference/electrical.json' with { type: 'json' };
import { momentsOf } from '../../src/features/electrical/moments.js';
import { SegmentSpectra } from '../../src/features/electrical/segment-spectra.js';
import { meanPower } from '../../src/features/electrical/window-lines.js';

/** The closed form of fixtures/reference/electrical.py. */
const RATE = 5000;
const values = Float64Array.from({ length: RATE }, (_, n) => {
  const t = n / RATE;
  return (
    25 +
    0.7 * Math.sin(2 * Math.PI * 137.3 * t) +
    0.3 * Math.sin(2 * Math.PI * 611 * t + 1) +
    0.5 * Math.cos(7 * t * t) +
    0.2 * t
  );
});

describe('against SciPy', () => {
  it('averages Hann segments as scipy.signal.welch does', () => {
    // Rejects: a symmetric window, no detrending of each segment, one-sided power not doubled.
    const power = meanPower(new SegmentSpectra(RATE).push(values))!;
    reference.bins.forEach((bin, k) => {
      expect(Math.abs(power[bin]! / reference.power[k]! - 1)).toBeLessThan(1e-7);
    });
  });

  it('takes moments as scipy.stats does', () => {
    const moments = momentsOf([values.subarray(0, 1234), values.subarray(1234)]);
    expect(moments.sd).toBeCloseTo(reference.sd, 10);
    expect(moments.skewness).toBeCloseTo(reference.skewness, 9);
    expect(moments.kurtosis).toBeCloseTo(reference.kurtosis, 9);
  });
});
