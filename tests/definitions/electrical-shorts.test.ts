import { describe, expect, it } from 'vitest';
import { createRandom } from '../../src/core/index.js';
import { averageShort, histogram } from '../../src/features/electrical/index.js';
import { findShorts } from '../support/find-shorts.js';
import { dips, trace } from '../unit/features/electrical/traces.js';

const RATE = 10_000;

describe('what a short circuit is', () => {
  it.each([
    ['zeros', 0],
    ['a constant 22 V', 22],
    ['a dead short of 3 V', 3],
  ])('finds none in %s', (_, level) => {
    // Rejects: a fixed threshold of 8 to 12 V, which calls zeros and a dead short one endless short.
    const { shorts } = findShorts(
      trace(1, RATE, () => level),
      RATE,
    );
    expect(shorts).toEqual([]);
  });

  it('does not take a spike of one sample for a short', () => {
    // Rejects: no shortest duration.
    const voltage = trace(1, RATE, () => 20);
    voltage[5000] = 0;
    expect(findShorts(voltage, RATE).shorts).toEqual([]);
  });

  it('finds one short with its exact samples', () => {
    // Plain counting: samples 5000 to 5029 are low, so it starts at 5000 and ends at 5030.
    const voltage = trace(1, RATE, (t) => (t >= 0.5 && t < 0.503 - 1e-9 ? 4 : 20));
    const { shorts } = findShorts(voltage, RATE);
    expect(shorts.map((s) => [s.startSample, s.endSample, s.meanV])).toEqual([[5000, 5030, 4]]);
  });

  it('keeps a short that spans two blocks whole', () => {
    // Rejects: state lost between blocks of 50 ms (block edge at sample 500).
    const voltage = trace(0.2, RATE, (t) => (t >= 0.0495 && t < 0.0515 - 1e-9 ? 4 : 20));
    expect(findShorts(voltage, RATE).shorts.map((s) => [s.startSample, s.endSample])).toEqual([
      [495, 515],
    ]);
  });

  it.each([-4, -1.3, 0, 4])(
    'counts a square wave of shorts exactly under an offset of %f V',
    (offset) => {
      // Plain counting: 50 periods of 20 ms a second, each 3 ms low. Rejects: fixed volts.
      const voltage = dips({ seconds: 2, rateHz: RATE, periodS: 0.02, shortS: 0.003 }).map(
        (v) => v + offset,
      );
      const { shorts, thresholds } = findShorts(voltage, RATE);
      expect(shorts.length).toBe(100);
      for (const short of shorts) expect(short.endS - short.startS).toBeCloseTo(0.003, 9);
      expect(thresholds!.lowV).toBeGreaterThan(4 + offset);
      expect(thresholds!.highV).toBeLessThan(20 + offset);
      expect(thresholds!.lowV).toBeLessThan(thresholds!.highV);
    },
  );

  it('finds none in spray noise, ripple or between pulses', () => {
    const random = createRandom(4);
    const noise = trace(2, RATE, () => 27 + random.normal(0, 0.6));
    const ripple = trace(
      2,
      RATE,
      (t) => 24 + 3 * Math.sin(2 * Math.PI * 300 * t) + 2 * Math.sin(2 * Math.PI * 100 * t),
    );
    // Base 20 V, peaks 34 V: rejects thresholds half way between the two levels of the trace.
    const pulses = trace(2, RATE, (t) => ((t * 120) % 1 < 0.35 ? 34 : 20) + random.normal(0, 0.5));
    for (const voltage of [noise, ripple, pulses])
      expect(findShorts(voltage, RATE).shorts).toEqual([]);
    for (const offset of [-4, 4])
      expect(
        findShorts(
          pulses.map((v) => v + offset),
          RATE,
        ).shorts,
      ).toEqual([]);
  });

  it('follows the levels when the settings change', () => {
    // Rejects: thresholds frozen from the first seconds. 20 shorts a second in both halves.
    const part = (arcV: number) =>
      dips({ seconds: 3, rateHz: RATE, periodS: 0.05, shortS: 0.004, arcV });
    const voltage = Float64Array.from([...part(32), ...part(16)]);
    expect(findShorts(voltage, RATE).shorts.length).toBe(120);
  });
});

describe('incipient shorts', () => {
  const mixed = (usualS: number, touchS: number) => {
    const voltage = trace(2, RATE, () => 20);
    const put = (from: number, seconds: number) =>
      voltage.fill(4, from, from + Math.round(seconds * RATE));
    for (let k = 0; k < 38; k++) put(250 + 500 * k, k % 4 === 3 ? touchS : usualS);
    return findShorts(voltage, RATE).shorts;
  };

  it('calls touches far below the usual duration incipient', () => {
    // 9 of 38 are touches of 0.8 ms among shorts of 4 ms: 0.8 < min(2, 0.35 · 4).
    expect(mixed(0.004, 0.0008).filter((s) => s.incipient).length).toBe(9);
  });

  it('does not condemn short shorts that are all alike', () => {
    // Rejects: a fixed 2 ms rule, which would call all 38 incipient.
    expect(mixed(0.001, 0.001).filter((s) => s.incipient).length).toBe(0);
  });

  it('spares a touch that drove the current up', () => {
    // Rejects: duration alone where current is known. 300 A at the break against 150 A in the arc.
    const voltage = trace(2, RATE, () => 20);
    const current = trace(2, RATE, () => 150);
    for (let k = 0; k < 38; k++) {
      const length = k % 4 === 3 ? 8 : 40;
      voltage.fill(4, 250 + 500 * k, 250 + 500 * k + length);
      current.fill(300, 250 + 500 * k, 250 + 500 * k + length);
    }
    expect(findShorts(voltage, RATE, current).shorts.filter((s) => s.incipient).length).toBe(0);
  });
});

describe('average short and histogram', () => {
  it('averages around the starts and leaves out cut-off events', () => {
    const ramp = trace(0.01, RATE, (t) => t * RATE);
    const average = averageShort(
      ramp,
      [{ startSample: 1 }, { startSample: 40 }, { startSample: 60 }],
      RATE,
      0.001,
      0.001,
    );
    // Mean of samples 30… and 50…: 40, 41, …; the first event has no 10 samples before it.
    expect(average.count).toBe(2);
    expect(Array.from(average.mean.slice(0, 3))).toEqual([40, 41, 42]);
    expect(average.timeS[0]).toBeCloseTo(-0.001, 12);
  });

  it('counts as NumPy does: half-open bins, the last one closed', () => {
    const { counts, outside } = histogram(
      Float64Array.of(0, 1, 1.5, 2, 3, Number.NaN, -1),
      0,
      2,
      2,
    );
    expect(Array.from(counts)).toEqual([1, 3]);
    expect(outside).toBe(3);
  });
});
