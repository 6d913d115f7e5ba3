import { describe, expect, it } from 'vitest';
import { createSoundExtractor, SOUND_FEATURES } from '../../../src/features/index.js';
import { beatingNoise, cracks, sine, whiteNoise } from './sounds.js';

const RATE_HZ = 44_100;

/** Median of a feature over the windows of a sound, and the windows. */
function analyse(samples: Float64Array, rateHz = RATE_HZ) {
  const windows = createSoundExtractor(rateHz)
    .push([samples])
    .flatMap((event) => (event.type === 'window' ? [event.window] : []));
  const feature = (id: string): number => {
    const i = SOUND_FEATURES.features.findIndex((one) => one.id === id);
    const values = windows.map((window) => window.values[i]!).sort((a, b) => a - b);
    return values[Math.floor(values.length / 2)]!;
  };
  return { windows, feature };
}

const evenTimes = (rate: number, seconds: number) =>
  Array.from({ length: Math.floor((seconds - 0.1) * rate) }, (_, i) => 0.05 + i / rate);

describe('features of sound', () => {
  it('come one window a hop: 1.024 s long, 0.256 s apart, from the first sample', () => {
    const { windows } = analyse(whiteNoise(RATE_HZ, 2));
    expect(windows.map((window) => window.startS)).toEqual([0, 0.256, 0.512, 0.768]);
    expect(windows[0]!.endS).toBeCloseTo(1.024, 12);
  });

  it('carry the levels of all of the first window and of the newest hop after it', () => {
    // 16 ms a level. Rejects a first window that tells its newest hop only, by which edges came 0.77 s late.
    const { windows } = analyse(whiteNoise(RATE_HZ, 2));
    expect(windows.map((window) => window.sound!.levels.length)).toEqual([64, 16, 16, 16]);
  });

  it.each([40, 80, 123, 250])('find a beat of %d Hz', (beatHz) => {
    // Rejects an estimate in bins, half or double the rate.
    const { windows } = analyse(beatingNoise(RATE_HZ, 3, beatHz, 0.6));
    for (const window of windows) expect(window.sound!.lineHz).toBeCloseTo(beatHz, -0.3);
    expect(Math.min(...windows.map((window) => window.sound!.lineProminence))).toBeGreaterThan(20);
  });

  it('follow a beat down to its fundamental', () => {
    // Narrow cracks have harmonics as strong as the fundamental. Rejects the strongest line as the rate.
    const { windows } = analyse(cracks(RATE_HZ, 3, evenTimes(60, 3)));
    for (const window of windows) expect(Math.abs(window.sound!.lineHz - 60)).toBeLessThan(1);
  });

  it.each([25, 90, 180])('count %d sudden rises a second', (rate) => {
    // Rejects counting local peaks of the hiss between, or each crack twice.
    const { windows } = analyse(cracks(RATE_HZ, 3, evenTimes(rate, 3)));
    for (const window of windows.slice(1, -1))
      expect(Math.abs(window.sound!.onsetHz / rate - 1)).toBeLessThan(0.06);
  });

  it('tell even events from chance by their intervals and counts', () => {
    const even = analyse(cracks(RATE_HZ, 3, evenTimes(90, 3)));
    const chance: number[] = [];
    // Exponential intervals by inversion from an even sequence of quantiles, shuffled by a fixed stride.
    for (let i = 0, timeS = 0.05; timeS < 2.9; i++) {
      chance.push(timeS);
      timeS += 0.003 - (Math.log(1 - ((i * 37) % 101) / 101) * 0.9) / 90;
    }
    const random = analyse(cracks(RATE_HZ, 3, chance));
    expect(even.feature('onsetIntervalCv')).toBeLessThan(0.1);
    expect(random.feature('onsetIntervalCv')).toBeGreaterThan(0.5);
    // log10 of variance over mean: far below 0 for even events, about 0 for chance.
    expect(even.feature('onsetDispersion')).toBeLessThan(-1);
    expect(random.feature('onsetDispersion')).toBeGreaterThan(-0.6);
  });

  it('have the kurtosis of a normal for white noise and much more for cracks', () => {
    // log10(excess + 2): log10(2) for a normal. Rejects the non-excess kurtosis (log10 of 5).
    expect(analyse(whiteNoise(RATE_HZ, 3)).feature('kurtosis')).toBeCloseTo(Math.log10(2), 1);
    expect(analyse(cracks(RATE_HZ, 3, evenTimes(20, 3))).feature('kurtosis')).toBeGreaterThan(1);
  });

  it('place the centre and the crest of a spectrum', () => {
    // White noise is flat: its centre between 300 Hz and 7 kHz lies half way. Rejects a centroid in bins.
    const white = analyse(whiteNoise(RATE_HZ, 3));
    expect(2 ** white.feature('centroid')).toBeGreaterThan(3500);
    expect(2 ** white.feature('centroid')).toBeLessThan(3800);
    // Cut at 1.5 to 12 kHz by the analysis band, the averaged spectrum of white noise is nearly even.
    expect(white.feature('flatness')).toBeGreaterThan(0.95);
    expect(analyse(sine(RATE_HZ, 3, 5000)).feature('spectralCrest')).toBeGreaterThan(1);
  });

  it('are absent for what the sample rate cannot hold', () => {
    // Rejects 0 for absent: 12 to 18 kHz does not exist at 16 kHz.
    const { feature } = analyse(whiteNoise(16_000, 3), 16_000);
    expect(feature('airRatio')).toBeNaN();
    expect(feature('brightRatio')).toBeNaN();
    expect(feature('midRatio')).not.toBeNaN();
  });

  it('are all absent for digital silence', () => {
    const { windows } = analyse(new Float64Array(2 * RATE_HZ));
    for (const window of windows) expect(window.values.every(Number.isNaN)).toBe(true);
  });

  it('refuse a rate without an analysis band', () => {
    expect(() => createSoundExtractor(4000)).toThrow(/at least 7600/);
  });
});
