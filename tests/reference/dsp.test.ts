import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BiquadCascade, butterworth, hannWindow, RealFft } from '../../src/dsp/index.js';

/** Made by fixtures/reference/dsp.py with SciPy and NumPy. */
const reference = JSON.parse(
  readFileSync(new URL('../../fixtures/reference/dsp.json', import.meta.url), 'utf8'),
) as {
  rateHz: number;
  input: number[];
  butterworth: {
    kind: 'low-pass' | 'high-pass';
    order: number;
    cutoffHz: number;
    output: number[];
  }[];
  frame: number[];
  real: number[];
  imaginary: number[];
  hann: number[];
  hannSymmetric: number[];
};

const largestError = (got: ArrayLike<number>, wanted: readonly number[]): number =>
  Math.max(...wanted.map((value, i) => Math.abs(value - got[i]!)));

describe('filters against SciPy', () => {
  // scipy.signal.butter and sosfilt. Rejects: a cut-off that is not prewarped, sections of one damping,
  // a high-pass with the numerator of a low-pass, a state that is lost between blocks.
  it.each(reference.butterworth)('$kind of order $order at $cutoffHz Hz', (one) => {
    const sections = butterworth(one.kind, one.order, one.cutoffHz, reference.rateHz);
    for (const block of [400, 7, 64]) {
      const filter = new BiquadCascade(sections);
      const output: number[] = [];
      for (let at = 0; at < 400; at += block) {
        const part = Float64Array.from(reference.input.slice(at, at + block));
        filter.process(part, part);
        output.push(...part);
      }
      expect(output).toHaveLength(400);
      expect(largestError(output, one.output)).toBeLessThan(1e-12);
    }
  });

  it('starts anew after a reset', () => {
    const { kind, order, cutoffHz, output } = reference.butterworth[1]!;
    const filter = new BiquadCascade(butterworth(kind, order, cutoffHz, reference.rateHz));
    const run = (): Float64Array => {
      const part = Float64Array.from(reference.input);
      filter.process(part, part);
      return part;
    };
    run();
    expect(largestError(run(), output)).toBeGreaterThan(1e-3);
    filter.reset();
    expect(largestError(run(), output)).toBeLessThan(1e-12);
  });
});

describe('spectra against NumPy', () => {
  // numpy.fft.rfft. Rejects: a conjugate, a scale by the size, bins shifted by one.
  it('of a real frame', () => {
    const fft = new RealFft(64);
    const even = new Float64Array(64).fill(1);
    fft.transform(Float64Array.of(9, 9, ...reference.frame), 2, even);
    const real = reference.real.map((_, k) => fft.spectrum[2 * k]!);
    const imaginary = reference.real.map((_, k) => fft.spectrum[2 * k + 1]!);
    expect(largestError(real, reference.real)).toBeLessThan(1e-12);
    expect(largestError(imaginary, reference.imaginary)).toBeLessThan(1e-12);
  });

  // scipy.signal.get_window. Rejects: the symmetric window in place of the periodic one.
  it('of the Hann window, periodic', () => {
    const window = hannWindow(32);
    expect(largestError(window, reference.hann)).toBeLessThan(1e-12);
    expect(largestError(window, reference.hannSymmetric)).toBeGreaterThan(1e-3);
  });
});
