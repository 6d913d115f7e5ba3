import { describe, expect, it } from 'vitest';
import { Resampler } from '../../../../src/model/network/index.js';
import { Kernels } from '../../../../src/model/network/kernels.js';

function resampled(
  samples: Float64Array,
  fromHz: number,
  kernels: Kernels | null = null,
): number[] {
  const resampler = new Resampler(fromHz, 16000, kernels);
  return [...resampler.push(samples), ...resampler.flush()];
}

const tone = (hz: number, rateHz: number, seconds: number): Float64Array =>
  Float64Array.from({ length: Math.floor(seconds * rateHz) }, (_, i) =>
    Math.sin((2 * Math.PI * hz * i) / rateHz),
  );

const rms = (x: number[]): number => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);

describe('Resampler', () => {
  it.each([8000, 22050, 44100, 48000, 96000, 44056])(
    'keeps a tone of 1 kHz from %i Hz',
    (fromHz) => {
      const out = resampled(tone(1000, fromHz, 0.5), fromHz);
      expect(Math.abs(out.length - 8000)).toBeLessThanOrEqual(1);
      for (let i = 1000; i < 7000; i++)
        expect(Math.abs(out[i]! - Math.sin((2 * Math.PI * 1000 * i) / 16000))).toBeLessThan(0.005);
    },
  );

  it.each([44100, 48000])(
    'leaves nothing of 9 kHz from %i Hz, where it would fold to 7 kHz',
    (fromHz) => {
      const out = resampled(tone(9000, fromHz, 0.5), fromHz).slice(1000, 7000);
      expect(rms(out)).toBeLessThan(0.002);
    },
  );

  it('leaves nothing above 4.4 kHz of a sound of 8 kHz', () => {
    // 3 kHz at 8 kHz has its image at 5 kHz: what is not the tone itself must be small.
    const out = resampled(tone(3000, 8000, 0.5), 8000);
    const rest = out
      .map((x, i) => x - Math.sin((2 * Math.PI * 3000 * i) / 16000))
      .slice(1000, 7000);
    expect(rms(rest)).toBeLessThan(0.005);
  });

  it('gives sound of its own rate back as it is', () => {
    const x = tone(777, 16000, 0.1);
    expect(resampled(x, 16000)).toEqual([...x]);
  });

  it.each([8000, 44100, 48000, 44056])('gives the same with SIMD from %i Hz', (fromHz) => {
    const x = tone(1234, fromHz, 0.3);
    const kernels = Kernels.create();
    expect(kernels).not.toBeNull();
    const plain = resampled(x, fromHz);
    const fast = resampled(x, fromHz, kernels);
    expect(fast).toHaveLength(plain.length);
    fast.forEach((value, k) => {
      expect(Math.abs(value - plain[k]!)).toBeLessThan(1e-6);
    });
  });
});
