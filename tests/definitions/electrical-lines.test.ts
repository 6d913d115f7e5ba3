import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { findLine } from '../../src/features/electrical/index.js';
import { bandPower, SegmentSpectra } from '../../src/features/electrical/segment-spectra.js';
import { mainsMultipleNear, tonePower } from '../../src/features/electrical/tone.js';
import { findWindowLine, meanPower } from '../../src/features/electrical/window-lines.js';
import { trace } from '../unit/features/electrical/traces.js';

const RATE = 5000;
const spectra = new SegmentSpectra(RATE);

function spectrumOf(values: Float64Array): Float64Array {
  return meanPower(new SegmentSpectra(RATE).push(values))!;
}

describe('segment spectra', () => {
  it('add up to the variance of a sine and of noise', () => {
    // Plain maths: a sine of amplitude 2 V has a variance of 2 V²; noise of 0.5 V one of 0.25 V².
    const sine = spectrumOf(trace(2, RATE, (t) => 24 + 2 * Math.sin(2 * Math.PI * 400 * t)));
    expect(bandPower(sine, spectra.binHz, 0, 2500)).toBeCloseTo(2, 3);
    const random = createRandom(3);
    const noise = spectrumOf(trace(20, RATE, () => random.normal(0, 0.5)));
    expect(bandPower(noise, spectra.binHz, 0, 2500)).toBeCloseTo(0.25, 2);
  });

  it('are zero for a constant', () => {
    expect(bandPower(spectrumOf(trace(1, RATE, () => 24)), spectra.binHz, 0, 2500)).toBe(0);
  });
});

describe('the strongest line', () => {
  it('is found between bins, well above noise', () => {
    const random = createRandom(8);
    const power = spectrumOf(
      trace(4, RATE, (t) => 0.3 * Math.sin(2 * Math.PI * 213.7 * t) + random.normal(0, 0.5)),
    );
    const line = findLine(power, spectra.binHz, { fromHz: 5, toHz: 1200 });
    // Within a quarter of a bin. Rejects: the bin centre as the answer (213.7 lies 0.24 of a bin off).
    expect(Math.abs(line.rateHz - 213.7)).toBeLessThan(0.25 * spectra.binHz);
    expect(line.prominence).toBeGreaterThan(10);
  });

  it('is weak in noise and absent in silence', () => {
    const random = createRandom(9);
    const noise = findLine(spectrumOf(trace(4, RATE, () => random.normal())), spectra.binHz, {
      fromHz: 5,
      toHz: 1200,
    });
    expect(noise.prominence).toBeLessThan(3);
    const silence = findLine(spectrumOf(trace(1, RATE, () => 0)), spectra.binHz, {
      fromHz: 5,
      toHz: 1200,
    });
    expect(silence.rateHz).toBeNaN();
    expect(silence.prominence).toBe(0);
  });

  it('passes over mains ripple but not over drops at nearly the same rate', () => {
    const random = createRandom(10);
    const noise = () => random.normal(0, 0.3);
    const hum = trace(0.5, RATE, (t) => Math.sin(2 * Math.PI * 300 * t) + noise());
    const passed = findWindowLine(spectrumOf(hum), spectra.binHz, hum, RATE, Number.NaN);
    expect(passed.mainsHz).toEqual([300]);
    expect(passed.mainsRms).toBeCloseTo(Math.SQRT1_2, 1);
    expect(Math.abs(passed.rateHz - 300)).toBeGreaterThan(20);
    // Drops near 300 a second with 15 % jitter: a saw that restarts at each. Rejects: cutting out every
    // line near a mains multiple.
    let next = 0;
    let since = 0;
    const drops = trace(0.5, RATE, (t) => {
      if (t >= next) {
        since = t;
        next = t + (1 + random.normal(0, 0.15)) / 300;
      }
      return 3 * (1 - (t - since) * 300) + noise();
    });
    const kept = findWindowLine(spectrumOf(drops), spectra.binHz, drops, RATE, Number.NaN);
    expect(kept.mainsHz).toEqual([]);
    expect(Math.abs(kept.rateHz - 300)).toBeLessThan(30);
  });
});

describe('exact tones', () => {
  it('measures half the squared amplitude, whatever the offset', () => {
    const values = trace(0.5, RATE, (t) => 25 + 0.8 * Math.cos(2 * Math.PI * 150 * t + 1));
    expect(tonePower(values, RATE, 150)).toBeCloseTo(0.32, 6);
    expect(tonePower(values, RATE, 190)).toBeLessThan(1e-6);
    expect(tonePower(new Float64Array(0), RATE, 50)).toBeNaN();
  });

  it.each([
    [100.2, 0.3, 100],
    [359.8, 0.3, 360],
    [100.4, 0.3, Number.NaN],
    [130, 5, Number.NaN],
  ])('puts %f Hz within %f Hz of %f Hz', (hz, within, multiple) => {
    expect(mainsMultipleNear(hz, within)).toBe(multiple);
  });
});
