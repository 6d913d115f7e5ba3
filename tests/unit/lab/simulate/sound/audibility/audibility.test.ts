import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../../src/core/index.js';
import {
  AUDIBLE_D_PRIME,
  type Audibility,
  audibility,
  heardMode,
} from '../../../../../../src/lab/simulate/index.js';
import {
  BAND_COUNT,
  bandEnergies,
} from '../../../../../../src/lab/simulate/sound/audibility/band-energies.js';

const RATE = 16_000;
/** Samples from one frame to the next, and where the middle of the first frame lies: 2 ms under a Hann window. */
const HOP = 16;
/** Bins of 500 Hz in each listening band: 400–1200, –2200, –3200, –4700, –7200 Hz. */
const BINS = [2, 2, 2, 3, 5];

const white = (seed: number | string, count: number) => {
  const random = createRandom(seed);
  return Float64Array.from({ length: count }, () => random.normal());
};

/** Clicks of one sample in the middle of frames, `gap` frames apart, and their times. */
function clicks(count: number, height: number, gap: number) {
  const sound = new Float64Array(count);
  const timesS: number[] = [];
  for (let f = gap; (f + gap) * HOP < count; f += gap) {
    const at = (f + 1) * HOP;
    sound[at] = height;
    timesS.push(at / RATE);
  }
  return { sound, timesS };
}

/**
 * Covariance of band energies of white noise under a Hann window over the product of their means: two bins k
 * apart share (2/3)², (1/6)² of their amplitude squared for k = 1, 2, since w² = 3/8 − cos/2 + cos2/8.
 */
function bandCovariance(one: number, two: number): number {
  const start = (band: number) => BINS.slice(0, band).reduce((sum, n) => sum + n, 0);
  const shared = [1, 4 / 9, 1 / 36];
  let sum = 0;
  for (let i = 0; i < BINS[one]!; i++)
    for (let j = 0; j < BINS[two]!; j++)
      sum += shared[Math.abs(start(one) + i - start(two) - j)] ?? 0;
  return sum / (BINS[one]! * BINS[two]!);
}

/**
 * d′ of one listener's number for one click by the closed form. A click of height a in the middle of a frame has
 * a² in each bin, white noise of variance 1 has Σw² = 12 (32 samples, mean of w² is 3/8): s = a²/12, flat over the
 * bands, in one of `lags` frames. Frames that overlap by half share (1/6)² of their energy's variance.
 */
function closedForm(height: number, gap: number): number {
  const s = height ** 2 / 12;
  const lags = 2 * Math.max(1, Math.min(20, Math.floor(gap / 2))) + 1;
  const weight = (band: number, lag: number) =>
    ((lag === 0 ? 1 : 0) - 1 / lags) / bandCovariance(band, band);
  let added = 0;
  let variance = 0;
  const half = (lags - 1) / 2;
  for (let b = 0; b < BAND_COUNT; b++) {
    added += s * weight(b, 0);
    for (let c = 0; c < BAND_COUNT; c++)
      for (let l = -half; l <= half; l++)
        for (const [step, share] of [
          [0, 1],
          [1, 1 / 36],
          [-1, 1 / 36],
        ] as const)
          if (Math.abs(l + step) <= half)
            variance += share * weight(b, l) * weight(c, l + step) * bandCovariance(b, c);
  }
  return added / Math.sqrt(variance);
}

const dPrime = (found: Partial<Record<string, Audibility>>, kind = 'drop') => found[kind]!.dPrime;

describe('audibility', () => {
  const count = 20 * RATE;
  const hiss = white(1, count);

  it.each([
    [2, 50],
    [1, 10],
    [4, 20],
    [1, 3],
  ])('clicks of height %d in white noise, %i ms apart, as the closed form says', (height, gap) => {
    // The variance of energies is estimated from 20,000 frames: some 2 %. Rejects a window that is wider than half
    // of the gap, energies added as amplitudes, and the wrong count of free values in a band.
    const { sound, timesS } = clicks(count, height, gap);
    const found = audibility({
      rateHz: RATE,
      events: { drop: sound },
      rest: hiss,
      eventsS: { drop: timesS },
    });
    const expected = closedForm(height, gap) * Math.sqrt(timesS.length);
    expect(found.drop!.count).toBe(timesS.length);
    expect(Math.abs(dPrime(found) / expected - 1)).toBeLessThan(0.06);
    // Energies of clicks over those of noise: s for one frame in `gap`. 20 s of noise: 1 % a band.
    for (const db of found.drop!.overRestDb)
      expect(db).toBeCloseTo(10 * Math.log10(height ** 2 / 12 / gap), 0);
  });

  it('a listener who knows the times errs as often as d′ says', () => {
    // 400 seconds with clicks and 400 without, each judged by the weights of the closed form, half-way. Expected:
    // Φ(−d′/2); at d′ 2 that is 15.9 %, with a standard deviation of 1.3 % over 800 answers; three of them allowed.
    const gap = 25;
    const seconds = 1;
    const length = seconds * RATE;
    const events = clicks(length, 1, gap).timesS.length;
    // d′ goes with the square of the height.
    const height = Math.sqrt(2 / (closedForm(1, gap) * Math.sqrt(events)));
    const { sound, timesS } = clicks(length, height, gap);
    const half = Math.floor(gap / 2);
    const answer = (x: Float64Array): number => {
      const { series } = bandEnergies([x], RATE);
      let sum = 0;
      for (const timeS of timesS)
        for (let l = -half; l <= half; l++)
          for (let b = 0; b < BAND_COUNT; b++) {
            const f = Math.round(timeS * RATE) / HOP - 1 + l;
            const weight = ((l === 0 ? 1 : 0) - 1 / (2 * half + 1)) / bandCovariance(b, b);
            sum += (weight * (series[0]![f * BAND_COUNT + b] ?? 0)) / (12 * BINS[b]!);
          }
      return sum / timesS.length;
    };
    let middle = 0;
    for (let b = 0; b < BAND_COUNT; b++)
      middle += (0.5 * (height ** 2 / 12) * (1 - 1 / (2 * half + 1))) / bandCovariance(b, b);
    let wrong = 0;
    const trials = 400;
    for (let k = 0; k < trials; k++) {
      const noise = white(`trial ${k}`, length);
      const other = white(`other ${k}`, length);
      if (answer(noise) >= middle) wrong++;
      if (answer(other.map((v, i) => v + sound[i]!)) < middle) wrong++;
    }
    expect(Math.abs(wrong / (2 * trials) - 0.159)).toBeLessThan(0.04);
    const found = audibility({
      rateHz: RATE,
      events: { drop: sound },
      rest: white('one', length),
      eventsS: { drop: timesS },
    });
    expect(Math.abs(dPrime(found) - 2)).toBeLessThan(0.3);
  });

  it('has its margin at 1 % errors', () => {
    // Normal quantile of 0.99: 2.326 (from memory of statistics tables); d′ is twice that.
    expect(AUDIBLE_D_PRIME).toBeCloseTo(2 * 2.326, 2);
  });

  it('does not depend on level, and finds the way to the microphone', () => {
    const { sound, timesS } = clicks(count, 2, 50);
    const late = (ms: number) => {
      const shift = (ms * RATE) / 1000;
      return audibility({
        rateHz: RATE,
        events: { drop: sound.map((_, i) => 1e-4 * (sound[i - shift] ?? 0)) },
        rest: hiss.map((v) => 1e-4 * v),
        eventsS: { drop: timesS },
      });
    };
    const near = dPrime(late(0));
    expect(dPrime(late(9))).toBeGreaterThan(0.9 * near);
    expect(dPrime(late(9))).toBeLessThan(1.1 * near);
  });

  it('hears no events that run together to a steady sound', () => {
    // Every drop breathes for longer than the drops are apart: more hiss, but nothing that goes with the drops. The
    // clicks of a tenth of that energy stand out.
    const { timesS } = clicks(count, 1, 4);
    const steady = white(9, count);
    const found = audibility({
      rateHz: RATE,
      events: { drop: steady },
      rest: hiss,
      eventsS: { drop: timesS },
    });
    const sparse = audibility({
      rateHz: RATE,
      events: { drop: clicks(count, Math.sqrt(6.4), 4).sound },
      rest: hiss,
      eventsS: { drop: timesS },
    });
    expect(found.drop!.overRestDb[2]).toBeCloseTo(0, 0);
    expect(found.drop!.isAudible).toBe(false);
    expect(sparse.drop!.overRestDb[2]!).toBeLessThan(-8);
    expect(sparse.drop!.isAudible).toBe(true);
  });

  it('counts the other kinds as what hides a kind', () => {
    const { sound, timesS } = clicks(count, 1.5, 50);
    const loud = white(5, count).map((v) => 5 * v);
    const alone = audibility({
      rateHz: RATE,
      events: { drop: sound },
      rest: hiss,
      eventsS: { drop: timesS },
    });
    const hidden = audibility({
      rateHz: RATE,
      events: { drop: sound, pulse: loud },
      rest: hiss,
      eventsS: { drop: timesS, pulse: timesS },
    });
    // 26 times the noise energy: d′ falls by as much.
    expect(dPrime(alone) / dPrime(hidden)).toBeGreaterThan(20);
    expect(dPrime(alone) / dPrime(hidden)).toBeLessThan(32);
  });

  it('says nothing of kinds that do not happen, and that silent ones are not heard', () => {
    const found = audibility({
      rateHz: RATE,
      events: {},
      rest: hiss,
      eventsS: { drop: [1, 2], pulse: [] },
    });
    expect(Object.keys(found)).toEqual(['drop']);
    expect(found.drop).toMatchObject({ count: 2, dPrime: 0, isAudible: false });
  });

  it.each([8000, 44_100, 48_000])('takes sounds at %i Hz', (rateHz) => {
    // The same clicks over the same noise density at any rate above the bands; 8 kHz keeps the bands below 4 kHz.
    const n = 10 * rateHz;
    const noise = white(3, n);
    const timesS = Array.from({ length: 150 }, (_, k) => 0.2 + 0.05 * k);
    const drop = new Float64Array(n);
    for (const t of timesS) drop[Math.round(t * rateHz)] = 3;
    const found = audibility({ rateHz, events: { drop }, rest: noise, eventsS: { drop: timesS } });
    expect(found.drop!.isAudible).toBe(true);
    expect(found.drop!.overRestDb.slice(0, 3).every(Number.isFinite)).toBe(true);
  });

  it('hears events in digital silence', () => {
    const { sound, timesS } = clicks(count, 0.01, 50);
    const found = audibility({
      rateHz: RATE,
      events: { drop: sound },
      rest: new Float64Array(count),
      eventsS: { drop: timesS },
    });
    expect(found.drop!.isAudible).toBe(true);
  });
});

describe('the truth by ear', () => {
  const heard = { count: 9, dPrime: 9, isAudible: true, overRestDb: [] };
  const not = { ...heard, dPrime: 1, isAudible: false };

  it.each([
    ['spray', { drop: heard }, 0, 'spray'],
    ['spray', { drop: not }, 0, 'free-flight'],
    ['spray', { drop: not, reignition: heard }, 2, 'free-flight'],
    ['globular', {}, 0, 'free-flight'],
    ['globular', { drop: heard }, 0, 'globular'],
    ['globular', { drop: not, reignition: heard }, 2, 'globular'],
    ['globular', { drop: not, reignition: heard }, 0.5, 'free-flight'],
    ['globular', { drop: not, reignition: not, short: not }, 20, 'free-flight'],
    ['short-circuit', { reignition: not }, 90, 'short-circuit'],
    ['pulsed-spray', { drop: not, pulse: not }, 0, 'pulsed-spray'],
    ['mixed', {}, 0, 'mixed'],
    [null, {}, 0, null],
  ] as const)('%s with %j and %d shorts a second is %s', (mode, audible, shorts, expected) => {
    expect(heardMode(mode, audible, shorts)).toBe(expected);
  });
});
