import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { type LossySpec, throughLossy } from '../../../../../src/lab/simulate/devices/lossy.js';

const RATE = 44100;
const spec: LossySpec = {
  seed: 3,
  cutHz: 20_000,
  noiseDb: 20,
  slopeDb: 0,
  dropDb: 90,
  block: 1024,
};
const white = (count: number) => {
  const random = createRandom(8);
  return Float64Array.from({ length: count }, () => random.normal());
};
const power = (x: Float64Array) => x.reduce((sum, v) => sum + v * v, 0) / x.length;

describe('throughLossy', () => {
  it.each([14, 20, 26])('leaves rounding noise %i dB under the level of a block', (noiseDb) => {
    // A step of s leaves s²/12 in each part of a bin; the window halves the power of a block (mean of sin²)
    // and the overlap gives back sin² + cos² = 1 of the noise: 3 dB less noise than named. The grain is
    // drawn from 0.8 to 1.25 of the step, which changes the mean square by 6 % (0.26 dB). The cut lies
    // above half the rate, so that nothing but rounding is lost.
    const x = white(RATE);
    const y = throughLossy(x, { ...spec, noiseDb, cutHz: 30_000 }, RATE);
    const middle = (z: Float64Array) => z.subarray(4096, RATE - 4096);
    const noise = middle(y.map((v, i) => v - x[i]!));
    const underDb = 10 * Math.log10(power(middle(x)) / power(noise));
    // Rejects steps taken from the whole spectrum's sum, and noise laid down once per overlap.
    expect(Math.abs(underDb - (noiseDb + 3 - 0.26))).toBeLessThan(0.6);
  });

  it('drops what lies above the cut and keeps what lies below', () => {
    const tone = (hz: number) =>
      Float64Array.from({ length: RATE }, (_, i) => Math.sin((2 * Math.PI * hz * i) / RATE));
    const left = (hz: number) => power(throughLossy(tone(hz), { ...spec, cutHz: 10_000 }, RATE));
    expect(left(14_000)).toBeLessThan(1e-4);
    expect(left(3000)).toBeGreaterThan(0.45);
  });

  it('scales with its input', () => {
    // Rejects steps that are fixed against full scale.
    const x = white(8192);
    const one = throughLossy(x, spec, RATE);
    const hundredth = throughLossy(
      x.map((v) => v / 100),
      spec,
      RATE,
    );
    for (let i = 0; i < one.length; i += 37) expect(hundredth[i]! * 100).toBeCloseTo(one[i]!, 9);
  });

  it('smears an onset over its block, never further', () => {
    const x = white(RATE);
    const onset = RATE / 2;
    x.fill(0, 0, onset);
    const y = throughLossy(x, { ...spec, noiseDb: 8 }, RATE);
    expect(power(y.subarray(0, onset - 2 * spec.block))).toBeLessThan(1e-20);
    expect(power(y.subarray(onset - 200, onset))).toBeGreaterThan(1e-3);
  });
});
