import { describe, expect, it } from 'vitest';
import type { Result } from '../../../src/analysis/result/index.js';
import { readProcedure } from '../../../src/procedure/index.js';
import { type LimitRow, makeRecord, recordSchema } from '../../../src/record/index.js';
import { parseSetup } from '../../../src/setup/index.js';
import { PROCEDURE_DOCUMENT } from '../../support/procedure.js';
import { sampleResult } from '../../support/sample-result.js';

const NONE = { spray: 0, 'pulsed-spray': 0, undetermined: 0 };

const TRACE: Partial<Result> = {
  source: { ...sampleResult().source, kind: 'electrical' },
  features: {
    meanVoltageV: 20,
    voltageP05V: 3,
    voltageP95V: 25,
    meanCurrentA: 180,
    currentSdA: 40,
    powerW: 3420,
  },
  sourceProgramme: 'steady',
  shareOfArcTime: { 'short-circuit': 0.95, globular: 0.05, ...NONE },
  segments: [
    { startS: 1, endS: 5, mode: 'short-circuit', confidence: 0.97 },
    { startS: 5, endS: 5.4, mode: 'globular', confidence: 0.8 },
    { startS: 5.4, endS: 9, mode: 'short-circuit', confidence: 0.97 },
  ],
};

const record = (change: Partial<Result>, stated: Record<string, string>, document = {}) => {
  const setup = parseSetup(stated);
  const procedure = readProcedure({ ...PROCEDURE_DOCUMENT, ...document });
  return makeRecord({
    result: sampleResult({ ...TRACE, ...change }),
    stated: setup,
    setup,
    procedure,
  });
};
const rowOf = (
  limit: LimitRow['limit'],
  ...given: Parameters<typeof record>
): LimitRow | undefined => record(...given).limits.find((one) => one.limit === limit);

const AT_FEEDER = { traceVoltsAt: 'feeder' };

describe('limits of a record', () => {
  it('holds measured figures against them, with spread and place', () => {
    expect(rowOf('volts', {}, AT_FEEDER)).toMatchObject({
      outcome: 'inside',
      allowed: { min: 18, max: 22 },
      figure: 20,
      spread: { min: 3, max: 25 },
      basis: 'measured',
      place: 'feeder',
    });
    expect(rowOf('amperes', {}, {})).toMatchObject({
      outcome: 'inside',
      figure: 180,
      spread: { min: 140, max: 220 },
    });
    const hot = { features: { ...TRACE.features, meanCurrentA: 211 } };
    expect(rowOf('amperes', hot, {})?.outcome).toBe('outside');
  });

  it('does not judge volts whose place is not stated', () => {
    const row = rowOf('volts', {}, {});
    expect(row?.outcome).toBe('cannot-judge');
    expect(row?.whyMessage?.code).toBe('record-place-not-stated');
  });

  // Volts fall from source to feeder to arc: 20 V at the source may be anything below at the feeder.
  it('judges volts of another place only where no loss could mend them', () => {
    const volts = (meanVoltageV: number, place: string) =>
      rowOf('volts', { features: { ...TRACE.features, meanVoltageV } }, { traceVoltsAt: place })
        ?.outcome;
    expect(volts(20, 'source')).toBe('cannot-judge');
    expect(volts(17.5, 'source')).toBe('outside');
    expect(volts(25, 'source')).toBe('cannot-judge');
    expect(volts(23, 'arc')).toBe('outside');
    expect(volts(17.5, 'arc')).toBe('cannot-judge');
  });

  it('takes a meter for a sound, and says what sound does not show', () => {
    const sound = { source: sampleResult().source, features: {} };
    expect(rowOf('volts', sound, {})?.whyMessage?.code).toBe('record-sound-shows-no');
    expect(rowOf('volts', sound, { feederVolts: '17' })).toMatchObject({
      outcome: 'outside',
      figure: 17,
      basis: 'read',
      place: 'feeder',
    });
  });

  it('never calls measured what was stated, nor inside what was not', () => {
    expect(rowOf('wireFeed', {}, { wireFeed: '4.5m/min' })).toMatchObject({
      outcome: 'inside',
      basis: 'stated',
    });
    expect(rowOf('wireFeed', {}, {})).toMatchObject({ outcome: 'cannot-judge', figure: null });
    expect(rowOf('gas', {}, {})?.outcome).toBe('cannot-judge');
    expect(rowOf('gas', {}, { gas: 'Ar+8CO2' })?.outcome).toBe('outside');
    expect(rowOf('source', { sourceProgramme: 'pulsed' }, {})?.outcome).toBe('outside');
  });

  it('takes the travel speed from bead length and arc time: 8 s and 48 mm are 360 mm/min', () => {
    expect(rowOf('travelSpeed', {}, { beadLength: '48mm' })?.figure).toBeCloseTo(360, 9);
  });
});

describe('the mode in a record', () => {
  it('passes a short departure over and names the longest', () => {
    const one = record({}, {});
    expect(one.mode.longestDeparture).toEqual({ mode: 'globular', startS: 5, endS: 5.4 });
    expect(rowOf('longestDeparture', {}, {})?.outcome).toBe('inside');
    expect(rowOf('modeShare', {}, {})).toMatchObject({ outcome: 'inside', figure: 0.95 });
  });

  it('joins departures that touch, and lets unclear time end one', () => {
    const segments = [
      { startS: 1, endS: 1.4, mode: 'globular', confidence: 0.8 },
      { startS: 1.4, endS: 1.7, mode: 'spray', confidence: 0.8 },
      { startS: 1.7, endS: 2, mode: null, confidence: 0.3 },
      { startS: 2, endS: 2.4, mode: 'spray', confidence: 0.8 },
    ] as const;
    const row = rowOf('longestDeparture', { segments: [...segments] }, {});
    expect(row?.outcome).toBe('outside');
    expect(row?.figure).toBeCloseTo(0.7, 9);
  });

  it.each([
    [0.95, 0, 'inside'],
    [0.85, 0.1, 'cannot-judge'],
    [0.85, 0.02, 'outside'],
  ])('with %d wanted and %d unclear is %s', (wanted, undetermined, outcome) => {
    const shareOfArcTime = {
      ...NONE,
      'short-circuit': wanted,
      globular: 1 - wanted - undetermined,
      undetermined,
    };
    expect(rowOf('modeShare', { shareOfArcTime }, {})?.outcome).toBe(outcome);
  });

  it('is not judged where none is named, and nothing is then called inside', () => {
    const one = record({ status: 'unsure', mode: null, confidence: null }, AT_FEEDER);
    expect(one.limits[0]?.whyMessage?.code).toBe('record-mode-not-named');
    expect(one.outcome).toBe('cannot-judge');
  });

  it('never comes from the set voltage', () => {
    const [low, high] = ['14', '34'].map((volts) => record({}, { setVoltage: volts }));
    expect(low?.mode).toEqual(high?.mode);
    expect(low?.limits.slice(0, 2)).toEqual(high?.limits.slice(0, 2));
  });
});

describe('the outcome of a record', () => {
  const all = {
    ...AT_FEEDER,
    wireFeed: '4.5m/min',
    travelSpeed: '330mm/min',
    stickOut: '14mm',
    wireDiameter: '1.2mm',
    wireMaterial: 'carbon-steel',
    gas: 'Ar+18CO2',
    polarity: 'dcep',
    position: 'PB',
    plate: '5mm',
  };

  it('is inside only where everything is judged', () => {
    expect(record({}, all).outcome).toBe('inside');
    expect(record({}, { ...all, stickOut: 'unknown' }).outcome).toBe('inside-as-far-as-judged');
    expect(record({}, { ...all, travelSpeed: '290mm/min' }).outcome).toBe('outside');
  });

  it('fits its own schema and says that it is no qualification', () => {
    const one = recordSchema.parse(record({}, all));
    expect(one.statement).toMatch(/no qualification, no inspection/);
  });
});
