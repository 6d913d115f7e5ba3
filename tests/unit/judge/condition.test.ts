import { describe, expect, it } from 'vitest';
import type { DisturbanceKind } from '../../../src/core/index.js';
import type { DisturbanceReport } from '../../../src/features/index.js';
import { arcCondition, type ConditionInput } from '../../../src/judge/index.js';

/** 20 s of arc with so many of each disturbance, each of so many seconds. */
function report(found: Partial<Record<DisturbanceKind, [count: number, eachS: number]>> = {}) {
  const of = (kind: DisturbanceKind) => {
    const [count, eachS] = found[kind] ?? [0, 0];
    return { count, totalS: count * eachS, longestS: eachS };
  };
  const totals = {
    'long-short': of('long-short'),
    'arc-out': of('arc-out'),
    'burn-back': of('burn-back'),
    'long-arc': of('long-arc'),
    'current-dip': of('current-dip'),
  };
  return { marks: [], totals, judgedS: 20, notShown: [] } satisfies DisturbanceReport;
}

const ARC = { startS: 0, endS: 21, openStart: false, openEnd: false };

function rated(
  disturbances: DisturbanceReport | null,
  mode: ConditionInput['mode'] = 'short-circuit',
  figures: ConditionInput['figures'] = {},
  arcIntervals = [ARC],
) {
  const seen = arcCondition({ mode, arcIntervals, figures, disturbances });
  return Object.fromEntries(seen!.findings.map(({ name, rating }) => [name, rating]));
}

describe('ratings, each side of each limit', () => {
  it('stubbing: none good, up to one in 5 s and 2 % of the time to watch, more bad', () => {
    expect(rated(report())['stubbing']).toBe('good');
    expect(rated(report({ 'long-short': [4, 0.05] }))['stubbing']).toBe('watch');
    expect(rated(report({ 'long-short': [5, 0.05] }))['stubbing']).toBe('bad');
    expect(rated(report({ 'long-short': [1, 0.5] }))['stubbing']).toBe('bad');
  });
  it('arc-outs: a tenth of a second in all is the limit of bad', () => {
    expect(rated(report({ 'arc-out': [2, 0.04] }))['arc-outs']).toBe('watch');
    expect(rated(report({ 'arc-out': [3, 0.04] }))['arc-outs']).toBe('bad');
  });
  it('burn-back: any is bad', () => {
    expect(rated(report({ 'burn-back': [1, 0.3] }))['burn-back']).toBe('bad');
  });
  it('long arc: 2 and 10 % of the arc time', () => {
    expect(rated(report({ 'long-arc': [1, 0.4] }))['long-arc']).toBe('good');
    expect(rated(report({ 'long-arc': [1, 2] }))['long-arc']).toBe('watch');
    expect(rated(report({ 'long-arc': [1, 2.1] }))['long-arc']).toBe('bad');
  });
  it('dips: any to watch, over 5 % of the arc time bad', () => {
    expect(rated(report({ 'current-dip': [1, 1] }))['current-dips']).toBe('watch');
    expect(rated(report({ 'current-dip': [1, 1.1] }))['current-dips']).toBe('bad');
  });
  it('slow swings: 15 and 30 %', () => {
    const at = (slowSwingShare: number) => rated(report(), 'spray', { slowSwingShare });
    expect(at(0.15)['slow-swings']).toBe('good');
    expect(at(0.3)['slow-swings']).toBe('watch');
    expect(at(0.31)['slow-swings']).toBe('bad');
  });
  it('shorts of a spray: 2 and 10 a second; of a globular arc they are not rated', () => {
    const at = (allShortsRateHz: number) => rated(report(), 'spray', { allShortsRateHz });
    expect(at(2)['touches']).toBe('good');
    expect(at(10)['touches']).toBe('watch');
    expect(at(11)['touches']).toBe('bad');
    expect(rated(report(), 'globular', { allShortsRateHz: 30 })['touches']).toBeUndefined();
  });
  it('touches of a dip arc: a tenth and a quarter of all shorts', () => {
    const at = (incipientRateHz: number) =>
      rated(report(), 'short-circuit', { allShortsRateHz: 100, incipientRateHz });
    expect(at(10)['touches']).toBe('good');
    expect(at(25)['touches']).toBe('watch');
    expect(at(26)['touches']).toBe('bad');
  });
  it('rupture: over 2.5 times the mean, or spread over 30 %, to watch and never bad', () => {
    const at = (currentAtBreakA: number, currentAtBreakSdA: number) =>
      rated(report(), 'short-circuit', {
        meanCurrentA: 100,
        currentAtBreakA,
        currentAtBreakSdA,
        currentAtBreakMaxA: 900,
      })['spatter'];
    expect(at(250, 75)).toBe('good');
    expect(at(251, 10)).toBe('watch');
    expect(at(200, 61)).toBe('watch');
    expect(at(800, 600)).toBe('watch');
  });
});

describe('cold lap', () => {
  it('is spoken of only with a sign of it, never worse than "watch"', () => {
    expect(rated(report(), 'short-circuit', { shortShare: 0.3 })['cold-lap']).toBeUndefined();
    expect(rated(report(), 'short-circuit', { shortShare: 0.31 })['cold-lap']).toBe('watch');
    expect(rated(report({ 'long-short': [9, 0.5] }))['cold-lap']).toBe('watch');
  });
  it('is not spoken of in spray', () => {
    expect(rated(report({ 'current-dip': [1, 2] }), 'spray')['cold-lap']).toBeUndefined();
  });
});

describe('what cannot be judged', () => {
  it('by sound: only pauses are rated, none as bad', () => {
    const parts = [
      { ...ARC, endS: 5 },
      { ...ARC, startS: 5.5, endS: 9 },
      { ...ARC, startS: 12, endS: 20 },
    ];
    const seen = arcCondition({
      mode: 'spray',
      arcIntervals: parts,
      figures: { slowSwingShare: null },
      disturbances: null,
    })!;
    expect(seen.findings.map(({ name, rating }) => [name, rating])).toEqual([
      ['arc-outs', 'watch'],
    ]);
    // The pause of 3 s is the next weld.
    expect(seen.marks).toEqual([{ kind: 'arc-out', startS: 5, endS: 5.5 }]);
    expect(seen.notJudged[0]!.code).toBe('condition-not-by-sound');
  });
  it('without an arc there is nothing to say', () => {
    expect(
      arcCondition({ mode: null, arcIntervals: [], figures: {}, disturbances: report() }),
    ).toBeNull();
  });
  it('with a mix, what needs a mode is left out and said', () => {
    const figures = { stabilityIndex: 0.5, allShortsRateHz: 50, incipientRateHz: 0 };
    const seen = arcCondition({
      mode: 'mixed',
      arcIntervals: [ARC],
      figures,
      disturbances: report(),
    })!;
    expect(seen.findings.map((one) => one.name)).not.toContain('regularity');
    expect(seen.notJudged.map((one) => one.code)).toContain('condition-no-mode');
  });
  it('from voltage alone and current alone, the other is named', () => {
    const without = (...notShown: DisturbanceKind[]) =>
      arcCondition({
        mode: 'spray',
        arcIntervals: [ARC],
        figures: {},
        disturbances: { ...report(), notShown },
      })!;
    const volts = without('current-dip');
    expect(volts.notJudged.map((one) => one.code)).toContain('condition-no-current');
    expect(volts.findings.map((one) => one.name)).not.toContain('current-dips');
    const amps = without('long-short', 'burn-back', 'long-arc');
    expect(amps.notJudged.map((one) => one.code)).toContain('condition-no-voltage');
    expect(amps.findings.map((one) => one.name)).toEqual(['arc-outs', 'current-dips']);
  });
});
