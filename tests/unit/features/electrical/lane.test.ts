import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/core/index.js';
import { createElectricalExtractor } from '../../../../src/features/electrical/index.js';
import { dips, runLane, trace } from './traces.js';

describe('the electrical lane', () => {
  it('refuses what no lane can be made of, naming the value', () => {
    const make = (options: object) => () =>
      createElectricalExtractor({
        sampleRateHz: 10_000,
        hasVoltage: true,
        hasCurrent: false,
        ...options,
      });
    expect(make({ sampleRateHz: 0 })).toThrow(/sampling rate is 0 Hz/);
    expect(make({ hasVoltage: false })).toThrow(/Neither voltage nor current/);
    expect(make({ hopS: 1 })).toThrow(/hop of 1 s/);
    expect(() => make({})().push([])).toThrow(/0 channels/);
  });

  it('says nothing about nothing', () => {
    const { events, summary } = runLane(10_000, new Float64Array(0));
    expect(events).toEqual([]);
    expect(summary.sourceProgramme).toBe('unknown');
    expect(Object.values(summary.figures).every((figure) => figure === null || figure === 0)).toBe(
      true,
    );
  });

  it('puts a window every hop, wholly inside the arc', () => {
    const { windows, events } = runLane(
      10_000,
      dips({ seconds: 3, rateHz: 10_000, periodS: 0.013, shortS: 0.002, noiseV: 0.3 }),
    );
    expect(windows.map((w) => w.startS)).toEqual(Array.from({ length: 11 }, (_, k) => k * 0.25));
    for (const window of windows) expect(window.endS - window.startS).toBeCloseTo(0.5, 9);
    expect(events.at(-1)!.type).toBe('arc-stop');
  });

  it('gives the rates of a dip arc in windows and for the run', () => {
    // Plain counting: period 12.5 ms = 80 a second, 2 ms each, so 16 % of the time.
    const { column, summary } = runLane(
      10_000,
      dips({ seconds: 4, rateHz: 10_000, periodS: 0.0125, shortS: 0.002, noiseV: 0.3 }),
    );
    for (const rate of column('shortRateHz')) expect(rate).toBeCloseTo(80, 6);
    for (const share of column('shortShare')) expect(share).toBeCloseTo(0.16, 3);
    expect(summary.figures).toMatchObject({
      incipientRateHz: 0,
      dropRateHz: null,
      pulseRateHz: null,
    });
    expect(summary.figures['shortCircuitRateHz']).toBeCloseTo(80, 0);
    expect(summary.figures['shortDurationS']).toBeCloseTo(0.002, 9);
    expect(summary.figures['arcTimeS']).toBeCloseTo(0.0105, 4);
    expect(summary.figures['arcVoltageV']).toBeCloseTo(20, 1);
    expect(summary.figures['meanVoltageV']).toBeCloseTo(0.84 * 20 + 0.16 * 4, 1);
    // Ignition and crater stay out: 4 s less 0.3 s at either end, in whole slots.
    expect(summary.figures['steadyTimeS']).toBeCloseTo(3.4, 6);
  });

  it('has no absolute voltage among its features, and marks absent ones NaN', () => {
    const { column, extractor } = runLane(
      10_000,
      dips({ seconds: 2, rateHz: 10_000, periodS: 0.0125, shortS: 0.002, noiseV: 0.3 }),
    );
    expect(
      extractor.featureSet.features.map((f) => f.id).filter((id) => /mean|arcVoltage/i.test(id)),
    ).toEqual([]);
    expect(column('pulseDutyShare').every(Number.isNaN)).toBe(true);
  });

  it('recognises a source that cuts the current at contact and break', () => {
    // Three levels once a cycle: 40 A in the short, 350 A boost for 2 ms after it, 80 A base.
    const random = createRandom(9);
    const cycle = (t: number) => (t * 70) % 1;
    const voltage = trace(
      4,
      10_000,
      (t) => (cycle(t) < 0.15 ? 4 : cycle(t) < 0.29 ? 26 : 20) + random.normal(0, 0.2),
    );
    const current = trace(
      4,
      10_000,
      (t) => (cycle(t) < 0.15 ? 40 : cycle(t) < 0.29 ? 350 : 80) + random.normal(0, 1),
    );
    const { summary } = runLane(10_000, voltage, current);
    // Rejects: calling every two-level current pulsed.
    expect(summary.sourceProgramme).toBe('controlled-dip');
    expect(Math.abs(summary.figures['shortCircuitRateHz']! - 70)).toBeLessThan(1);
  });

  it('calls a plain dip steady with current, and leaves it open without', () => {
    const rateHz = 10_000;
    const voltage = dips({ seconds: 4, rateHz, periodS: 0.0125, shortS: 0.002, noiseV: 0.3 });
    let amps = 150;
    const current = voltage.map((v) => {
      amps += v < 10 ? 7 : (150 - amps) * 0.03;
      return amps;
    });
    expect(runLane(rateHz, voltage, current).summary.sourceProgramme).toBe('steady');
    expect(runLane(rateHz, voltage).summary.sourceProgramme).toBe('unknown');
  });

  it('flags a low sampling rate and missing samples', () => {
    const slow = runLane(
      2000,
      dips({ seconds: 2, rateHz: 2000, periodS: 0.0125, shortS: 0.003, noiseV: 0.3 }),
    );
    expect(slow.summary.quality.map((flag) => flag.code)).toContain('sample-rate-low');
    const voltage = dips({
      seconds: 2,
      rateHz: 10_000,
      periodS: 0.0125,
      shortS: 0.003,
      noiseV: 0.3,
    });
    voltage[7000] = Number.NaN;
    const { quality } = runLane(10_000, voltage).summary;
    expect(quality.map((flag) => flag.code)).toEqual(['voltage-missing-samples']);
    expect(quality[0]!.share).toBeCloseTo(1 / 20_000, 9);
  });

  it('works from current alone', () => {
    const random = createRandom(2);
    const current = trace(3, 5000, (t) => 150 + 100 * ((t * 57) % 1) + random.normal(0, 2));
    const { extractor, windows, column } = runLane(5000, null, current);
    expect(extractor.featureSet.id).toBe('current');
    expect(windows.length).toBeGreaterThan(8);
    // A saw of 57 Hz has all multiples; the line may be a low one (octave errors are the rule), but no other rate.
    for (const hz of column('currentLineHz')) {
      expect(Math.round(hz / 57)).toBeLessThanOrEqual(4);
      expect(Math.abs(hz - 57 * Math.round(hz / 57))).toBeLessThan(3);
    }
  });
});
