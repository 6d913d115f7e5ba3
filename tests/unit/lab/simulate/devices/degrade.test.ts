import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { convolve } from '../../../../../src/lab/simulate/devices/convolve.js';
import {
  atRate,
  clip,
  controlGain,
  digitise,
} from '../../../../../src/lab/simulate/devices/device.js';
import { suppressNoise } from '../../../../../src/lab/simulate/devices/suppress.js';
import {
  CHAIN_FAMILIES,
  degradeSound,
  drawChain,
  inBand,
  makeNoise,
  NOISE_KINDS,
  type SoundChain,
} from '../../../../../src/lab/simulate/index.js';

const RATE = 44100;
const white = (seed: number, count: number, level = 1) => {
  const random = createRandom(seed);
  return Float64Array.from({ length: count }, () => level * random.normal());
};
const rms = (x: Float64Array) => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
const tone = (hz: number, count: number, level = 1) =>
  Float64Array.from({ length: count }, (_, i) => level * Math.sin((2 * Math.PI * hz * i) / RATE));

const plain: SoundChain = {
  family: 'test',
  seed: 5,
  room: null,
  noises: [{ kind: 'rain', share: 1 }],
  snrDb: null,
  levelDb: -30,
  microphone: { lowCutHz: 5, highCutHz: 24000, peaks: [], noise: 0 },
  gainControl: null,
  clip: null,
  suppress: null,
  outRateHz: RATE,
  bits: 24,
  lossy: null,
  codec: null,
};

describe('degradeSound', () => {
  it.each([10, 0, -6])('mixes noise at %i dB in the band, where the arc burns', (snrDb) => {
    // The noise is what is left after the best-fitting copy of the clean sound is taken out (plain
    // least squares). Rejects a ratio taken over the whole file, or over the whole band.
    const arc = white(1, 2 * RATE);
    arc.fill(0, 0, RATE);
    const options = { arcOn: [{ startS: 1, endS: 2 }] };
    const clean = inBand(degradeSound(arc, RATE, plain, options).samples, RATE).subarray(RATE);
    const noisy = inBand(
      degradeSound(arc, RATE, { ...plain, snrDb }, options).samples,
      RATE,
    ).subarray(RATE);
    const dot = clean.reduce((sum, v, i) => sum + v * noisy[i]!, 0);
    const scale = dot / clean.reduce((sum, v) => sum + v * v, 0);
    const rest = noisy.map((v, i) => v - scale * clean[i]!);
    const measured = 20 * Math.log10((scale * rms(clean)) / rms(rest));
    expect(Math.abs(measured - snrDb)).toBeLessThan(0.5);
  });

  it('gives the same samples for the same chain, and finite ones for every family', () => {
    for (const family of CHAIN_FAMILIES) {
      const chain = drawChain(createRandom(family), { family });
      const arc = white(2, RATE);
      const options = { arcOn: [{ startS: 0.1, endS: 0.9 }] };
      const first = degradeSound(arc, RATE, chain, options);
      expect(degradeSound(arc, RATE, chain, options).samples).toEqual(first.samples);
      expect(first.samples.every((v) => Number.isFinite(v) && Math.abs(v) <= 1)).toBe(true);
      expect(first.rateHz).toBe(chain.outRateHz);
    }
  });

  it('says which chain families exist', () => {
    expect(() => drawChain(createRandom(1), { family: 'studioo' })).toThrow(
      /studio, shop, phone, call/,
    );
  });
});

describe('makeNoise', () => {
  it.each(NOISE_KINDS)('%s is finite, repeatable and at rms 1', (kind) => {
    const noise = makeNoise(kind, createRandom(9), 16000, 24000);
    expect(noise).toHaveLength(24000);
    expect(noise.every(Number.isFinite)).toBe(true);
    expect(makeNoise(kind, createRandom(9), 16000, 24000)).toEqual(noise);
    if (kind !== 'silence') expect(rms(noise)).toBeCloseTo(1, 6);
  });
});

describe('the parts of the chain', () => {
  it('convolves as the direct sum does', () => {
    // Plain definition of convolution. Rejects wrong block overlap and a mixed-up pair of blocks.
    const signal = white(3, 9000);
    const kernel = white(4, 700);
    const fast = convolve(signal, kernel);
    for (const n of [0, 1, 699, 700, 3000, 6500, 8999]) {
      let sum = 0;
      for (let k = 0; k < kernel.length && k <= n; k++) sum += kernel[k]! * signal[n - k]!;
      expect(fast[n]).toBeCloseTo(sum, 8);
    }
  });

  it('gain control brings loud and quiet to its target', () => {
    // After many time constants a steady tone's peak stands at the target level, by definition.
    const spec = { attackS: 0.005, releaseS: 0.05, targetDb: -12, maxGainDb: 40 };
    for (const level of [0.01, 0.9]) {
      const out = controlGain(tone(1000, RATE, level), spec, RATE).subarray(RATE / 2);
      const peak = out.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
      expect(Math.abs(20 * Math.log10(peak) + 12)).toBeLessThan(1);
    }
  });

  it('clips at the rail', () => {
    expect(
      Array.from(clip(Float64Array.of(-2, -0.1, 0.1, 0.5, 2), { kind: 'hard', at: 0.25 })),
    ).toEqual([-0.25, -0.1, 0.1, 0.25, 0.25]);
  });

  it('rounds to the steps of its bits', () => {
    // 3 bits: steps of 1/4, from −1 to +3/4.
    expect(Array.from(digitise(Float64Array.of(-3, -0.3, 0.12, 0.13, 0.9), 3))).toEqual([
      -1, -0.25, 0, 0.25, 0.75,
    ]);
  });

  it('keeps a tone below half of the new rate and drops one above', () => {
    const kept = atRate(tone(1000, RATE), RATE, 16000).subarray(2000, 14000);
    const lost = atRate(tone(11000, RATE), RATE, 16000).subarray(2000, 14000);
    expect(rms(kept)).toBeCloseTo(Math.SQRT1_2, 2);
    expect(rms(lost)).toBeLessThan(0.05);
  });

  it('suppression takes steady hiss down and leaves sharp clicks', () => {
    // That is what it is built to do; rejects a suppressor that does nothing or that mutes everything.
    const spec = { depthDb: 15, strength: 1.5, adaptS: 1, frame: 512 };
    const hiss = white(6, 3 * RATE, 0.01);
    for (let k = RATE; k < 3 * RATE; k += 11025) hiss[k] = 1;
    const out = suppressNoise(hiss, spec, RATE);
    const quiet = rms(out.subarray(2 * RATE + 4000, 2 * RATE + 9000)) / 0.01;
    expect(quiet).toBeLessThan(0.6);
    expect(quiet).toBeGreaterThan(0.1);
    expect(out[2 * RATE + 11025 * 3 - 22050 - 11025]!).toBeGreaterThan(0.5);
  });
});
