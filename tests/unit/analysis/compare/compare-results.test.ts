import { describe, expect, it } from 'vitest';
import {
  bySecond,
  compareResults,
  comparisonSchema,
  corrected,
  meanError,
  modeShares,
  type RateTrack,
  shareDifference,
} from '../../../../src/analysis/compare/index.js';
import { normalQuantile } from '../../../../src/analysis/compare/stability/index.js';
import { type Result, SCHEMA_VERSION } from '../../../../src/analysis/result/index.js';
import { createRandom } from '../../../../src/core/index.js';

/** An invented result of a dip run: 10 s, 100 shorts a second, intervals spread by a fifth. */
function result(more: Partial<Result> = {}, features: Result['features'] = {}): Result {
  return {
    schemaVersion: SCHEMA_VERSION,
    tool: { name: 'arc-transfer', version: '0', host: 'node' },
    source: {
      path: 'invented.csv',
      sha256: null,
      kind: 'electrical',
      format: 'csv',
      sampleRateHz: 10_000,
      durationS: 10,
      channels: [],
      notes: [],
    },
    status: 'ok',
    statusReason: '',
    error: null,
    mode: 'short-circuit',
    confidence: 0.95,
    sourceProgramme: 'steady',
    probabilities: null,
    shareOfArcTime: null,
    arcStretches: [],
    segments: [{ startS: 0, endS: 10, mode: 'short-circuit', confidence: 0.95 }],
    features: {
      steadyTimeS: 10,
      shortCircuitRateHz: 100,
      shortIntervalCv: 0.2,
      shortDurationS: 0.003,
      shortDurationCv: 0.25,
      meanVoltageV: 18,
      voltageSdV: 6,
      ...features,
    },
    quality: [],
    reasons: [],
    crossCheck: null,
    settings: { fingerprint: 'a', values: {} },
    model: null,
    steps: [],
    cautions: [],
    ...more,
  };
}

const named = (comparison: ReturnType<typeof compareResults>, name: string) =>
  comparison.changes.find((one) => one.name === name)!;

describe('compareResults', () => {
  it('finds nothing between a result and itself', () => {
    const comparison = compareResults(result(), result());
    expect(comparisonSchema.safeParse(comparison).success).toBe(true);
    expect(comparison.mode.answer).toBe('same');
    expect(comparison.changes.length).toBeGreaterThan(3);
    for (const one of comparison.changes) {
      expect(one.difference).toBe(0);
      expect(one.moreThanChance).toBe(false);
    }
  });

  // Hand calculation: 1000 intervals of CV 0.2 give a rate of 100 an error of 100·0.2/√1000 = 0.632;
  // two runs, √2 of it, times 1.96: ±1.753. Rejects: one run's error, intervals counted as seconds.
  it('gives the interval of a rate from its intervals', () => {
    const { interval } = named(compareResults(result(), result()), 'shortCircuitRateHz');
    expect(interval?.high).toBeCloseTo(1.753, 3);
    expect(interval?.low).toBeCloseTo(-1.753, 3);
  });

  it('calls 100 against 110 a change, and 100 against 101 not', () => {
    const ten = compareResults(result(), result({}, { shortCircuitRateHz: 110 }));
    expect(named(ten, 'shortCircuitRateHz').moreThanChance).toBe(true);
    const one = compareResults(result(), result({}, { shortCircuitRateHz: 101 }));
    expect(named(one, 'shortCircuitRateHz').moreThanChance).toBe(false);
  });

  // Rejects: any positive answer without evidence of spread.
  it('says that chance cannot be judged where a run does not show its spread', () => {
    const [a, b] = [{ eventRateHz: 120 }, { eventRateHz: 180 }];
    const change = named(compareResults(result({}, a), result({}, b)), 'eventRateHz');
    expect(change).toMatchObject({ difference: 60, interval: null, moreThanChance: null });
  });

  it('judges the event rate from the rates by second where they were kept', () => {
    const [before, after] = [track(120, 4, 'x'), track(180, 4, 'y')];
    const [a, b] = [{ eventRateHz: 120 }, { eventRateHz: 180 }];
    const comparison = compareResults(result({}, a), result({}, b), { before, after });
    expect(named(comparison, 'eventRateHz')).toMatchObject({ moreThanChance: true });
    expect(comparison.trends.before).not.toBeNull();
  });

  it('does not compare sound with a trace, nor a mode with none', () => {
    const sound = result();
    const other = { ...sound, source: { ...sound.source, kind: 'sound' as const } };
    const mixed = compareResults(sound, other);
    expect(mixed.changes.every(({ name }) => name.startsWith('share.'))).toBe(true);
    expect(mixed.notes.join(' ')).toContain('not compared');
    const none = compareResults(sound, result({ status: 'unsure', mode: null, confidence: null }));
    expect(none.mode.answer).toBe('cannot-tell');
  });

  it('does not call a change of mode that rests on a weak label', () => {
    const weak = result({ mode: 'globular', confidence: 0.6 });
    expect(compareResults(result(), weak).mode.answer).toBe('cannot-tell');
    const sure = result({ mode: 'globular', confidence: 0.95 });
    expect(compareResults(result(), sure).mode.answer).toBe('changed');
  });

  it('warns that two recordings do not show how welds differ', () => {
    expect(compareResults(result(), result()).notes[0]).toContain('record several');
  });
});

/** Rates around a level, a window each half second, deterministic. */
function track(rateHz: number, sd: number, seed: string): RateTrack {
  const random = createRandom(seed);
  const timesS = Array.from({ length: 40 }, (_, i) => i / 2);
  return { timesS, ratesHz: timesS.map(() => random.normal(rateHz, sd)) };
}

describe('parts of the comparison', () => {
  // Property over 200 pairs from the same process: a 95 % test may err in about 5 %; with Holm less.
  // Rejects: errors taken from overlapping windows or from one side only.
  it('errs rarely where nothing changed', () => {
    let alarms = 0;
    for (let i = 0; i < 200; i++) {
      const [before, after] = [track(120, 5, `a${i}`), track(120, 5, `b${i}`)];
      const mean = (one: RateTrack) => one.ratesHz.reduce((sum, x) => sum + x, 0) / 40;
      const [a, b] = [{ eventRateHz: mean(before) }, { eventRateHz: mean(after) }];
      const comparison = compareResults(result({}, a), result({}, b), { before, after });
      if (named(comparison, 'eventRateHz').moreThanChance === true) alarms++;
    }
    expect(alarms).toBeLessThanOrEqual(10);
  });

  // Plain maths: the mean of 400 independent values of sd 1 has an error of 0.05.
  it('bootstraps the error of a mean, reproducibly', () => {
    const random = createRandom('series');
    const series = Float64Array.from({ length: 400 }, () => random.normal());
    expect(meanError(series, 1)).toBeGreaterThan(0.04);
    expect(meanError(series, 1)).toBeLessThan(0.06);
    expect(meanError(series, 1)).toBe(meanError(series, 1));
    expect(meanError(new Float64Array(4), 1)).toBeNaN();
  });

  // Rejects: single values drawn, which would call a slow wave as certain as noise.
  it('gives a series with memory a larger error', () => {
    const random = createRandom('memory');
    let level = 0;
    const series = Float64Array.from({ length: 400 }, () => {
      level = 0.9 * level + random.normal();
      return level;
    });
    const shuffled = Float64Array.from(series).sort(
      (a, b) => Math.sin(a * 1e4) - Math.sin(b * 1e4),
    );
    expect(meanError(series, 1)).toBeGreaterThan(1.5 * meanError(shuffled, 1));
  });

  // Newcombe (1998), example (a) of his Table II, from memory: 56/70 − 48/80 = 0.2, 0.0524 to 0.3339.
  it('gives Newcombe’s interval of two shares', () => {
    const z = normalQuantile(0.975);
    const [after, before] = [
      { share: 56 / 70, looks: 70 },
      { share: 48 / 80, looks: 80 },
    ];
    const { low, high } = shareDifference(before, after, z);
    expect(low).toBeCloseTo(0.0524, 4);
    expect(high).toBeCloseTo(0.3339, 4);
  });

  it('counts a run that changes twice as few looks', () => {
    const pieces = (modes: ('spray' | 'globular')[]) =>
      modeShares(
        modes.map((mode, i) => ({ startS: i * 10, endS: i * 10 + 10, mode, confidence: 1 })),
      )!;
    expect(pieces(['spray', 'spray', 'spray']).looks).toBe(30);
    expect(pieces(['spray', 'globular', 'spray'])).toMatchObject({ looks: 6 });
    expect(pieces(['spray', 'globular', 'spray']).shares.spray).toBeCloseTo(2 / 3, 12);
    expect(modeShares([{ startS: 0, endS: 1, mode: null, confidence: 0 }])).toBeNull();
  });

  // Holm by hand: 0.01·3, then max(0.03, 0.03·2), then max(0.06, 0.04·1).
  it('corrects for the number of figures', () => {
    const change = (name: string, p: number | null) => ({
      ...compareResults(result(), result()).changes[0]!,
      name,
      p,
      moreThanChance: null,
    });
    const out = corrected([
      change('a', 0.01),
      change('b', 0.04),
      change('c', 0.03),
      change('d', null),
    ]);
    expect(out.map(({ p }) => p)).toEqual([
      expect.closeTo(0.03, 12),
      expect.closeTo(0.06, 12),
      expect.closeTo(0.06, 12),
      null,
    ]);
    expect(out.map((one) => one.moreThanChance)).toEqual([true, false, false, null]);
  });

  it('takes one median a second', () => {
    const found = bySecond({ timesS: [0.1, 0.5, 0.9, 2.2], ratesHz: [10, 30, 20, Number.NaN] });
    expect(found).toEqual({ timesS: [0.5], ratesHz: [20] });
  });
});
