import { describe, expect, it } from 'vitest';
import { progressRows, rateTrend } from '../../../../src/analysis/compare/index.js';
import type { Result } from '../../../../src/analysis/result/index.js';
import { sampleResult } from '../../../support/sample-result.js';

const finding = (rating: 'good' | 'watch' | 'bad') => ({
  name: 'stubbing',
  rating,
  value: 0,
  unit: '1',
  text: '',
  code: '',
  usual: '',
  usualMessage: { code: '', params: {} },
});

/** An invented run of 30 s: so many findings as usual of four, and so many disturbances. */
const run = (good: number, marks: number, more: Partial<Result> = {}): Result =>
  sampleResult({
    arcStretches: [{ startS: 0, endS: 30, openStart: false, openEnd: false }],
    mode: 'short-circuit',
    shareOfArcTime: {
      'short-circuit': 0.8,
      globular: 0.2,
      spray: 0,
      'pulsed-spray': 0,
      undetermined: 0,
    },
    arcCondition: {
      findings: [0, 1, 2, 3].map((k) => finding(k < good ? 'good' : 'bad')),
      marks: Array.from({ length: marks }, (_, k) => ({
        kind: 'arc-out' as const,
        startS: k,
        endS: k + 0.1,
      })),
      notJudged: [],
      notJudgedMessages: [],
    },
    ...more,
  });

describe('progress by name and day', () => {
  const source = { ...run(0, 0).source, kind: 'electrical' as const };
  const runs = [
    { name: 'ben', day: '2026-03-02', result: run(1, 2, { source }) },
    { name: 'anna', day: '2026-03-09', result: run(4, 0, { source }) },
    { name: 'anna', day: '2026-03-02', result: run(2, 1, { source }) },
    { name: 'anna', day: '2026-03-02', result: run(3, 4, { source }) },
  ];
  it('has a row for each name and day, in that order, with the means of its runs', () => {
    const rows = progressRows(runs, null);
    expect(rows.map((one) => [one.name, one.day, one.runs])).toEqual([
      ['anna', '2026-03-02', 2],
      ['anna', '2026-03-09', 1],
      ['ben', '2026-03-02', 1],
    ]);
    // (2/4 + 3/4) / 2, and 1 and 4 marks in half a minute each: (2 + 8) / 2.
    expect(rows[0]!.goodShare).toBeCloseTo(0.625, 12);
    expect(rows[0]!.disturbancesPerMin).toBeCloseTo(5, 12);
    expect(rows[0]!.modeShare).toBeCloseTo(0.8, 12);
    expect(rows[0]!.differing).toBeNull();
  });
  it('counts the time in the wanted mode where one is wanted', () => {
    expect(progressRows(runs, 'globular')[0]!.modeShare).toBeCloseTo(0.2, 12);
  });
  it('counts no disturbances of a sound, which shows pauses alone', () => {
    const sound = run(2, 3, { source: { ...source, kind: 'sound' } });
    const [row] = progressRows([{ name: 'a', day: '2026-01-01', result: sound }], null);
    expect(row!.disturbancesPerMin).toBeNull();
  });
  it('counts what differs from a reference by more than chance', () => {
    const features = (shortCircuitRateHz: number) => ({
      steadyTimeS: 10,
      shortCircuitRateHz,
      shortIntervalCv: 0.2,
    });
    const of = (rateHz: number) => run(4, 0, { source, features: features(rateHz), segments: [] });
    const rows = progressRows(
      [
        { name: 'near', day: '2026-01-01', result: of(100) },
        { name: 'far', day: '2026-01-01', result: of(140) },
      ],
      null,
      of(100),
    );
    // Two figures show their spread: the rate, known to 0.2·100/√1000 = 0.63 Hz, and the spread, which is the same.
    expect(rows.map((one) => [one.name, one.differing])).toEqual([
      ['far', { mean: 1, of: 2 }],
      ['near', { mean: 0, of: 2 }],
    ]);
  });
});

describe('trends that are not known', () => {
  it('are left out: the interval spans more than the rate itself over the run', () => {
    // Five seconds of a rate that leaps between 20 and 300 Hz: no slope can be told from it.
    const leaping = { timesS: [0.5, 1.5, 2.5, 3.5, 4.5], ratesHz: [20, 300, 25, 290, 30] };
    expect(rateTrend(leaping)).toBeNull();
  });
  it('are given where the rate is steady enough, with their slope', () => {
    const timesS = Array.from({ length: 20 }, (_, k) => k + 0.5);
    const steady = { timesS, ratesHz: timesS.map((t) => 100 + t) };
    expect(rateTrend(steady)?.slopePerS).toBeCloseTo(1, 9);
  });
});
