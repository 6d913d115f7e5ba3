import { describe, expect, it } from 'vitest';
import {
  type DropTruth,
  publishedDipCase,
  type Release,
} from '../../../../../src/lab/simulate/index.js';
import { nameRun, type Observed } from '../../../../../src/lab/simulate/physics/label.js';

const arcOn = [{ startS: 0, endS: 10 }];
const drop = (timeS: number, diameterMm: number, release: Release = 'hanging'): DropTruth => ({
  timeS,
  diameterMm,
  release,
});
const short = (startS: number, transferredMm3: number) => ({
  startS,
  endS: startS + 0.002,
  transferredMm3,
  incipient: transferredMm3 === 0,
});
const seen = (parts: Partial<Observed>): Observed => ({
  shorts: [],
  drops: [],
  arcOn,
  pulses: [],
  ...parts,
});
/** 1.2 mm wire on a steady source, whatever its settings were meant for. */
const steady = publishedDipCase();

describe('nameRun', () => {
  it('goes by volume, not by counts', () => {
    // Ten 0.5 mm drops carry 0.65 mm³ (hand: 10·pi/6·0.125); one short carries 6 mm³: 90 %.
    const drops = Array.from({ length: 10 }, (_, k) => drop(k, 0.5));
    const truth = nameRun(steady, seen({ drops, shorts: [short(1, 6)] }), []);
    expect(truth.mode).toBe('short-circuit');
    expect(truth.shares['short-circuit']).toBeCloseTo(6 / 6.654, 3);
    expect(truth.unambiguous).toBe(true);
  });

  it('parts globular from spray about the wire diameter, and doubts what lies just above it', () => {
    // Our boundary about the published one (the wire diameter): spray to 1.0, globular from 1.15 wire diameters.
    const named = (mm: number) => {
      const { mode, unambiguous } = nameRun(
        steady,
        seen({ drops: [drop(1, mm), drop(2, mm)] }),
        [],
      );
      return [mode, unambiguous];
    };
    expect(named(1.1)).toEqual(['spray', true]);
    expect(named(1.19)).toEqual(['spray', true]);
    expect(named(1.25)).toEqual(['spray', false]);
    expect(named(1.32)).toEqual(['globular', false]);
    expect(named(1.4)).toEqual(['globular', true]);
  });

  it('names drops of a tenth of a second together: scatter about the boundary is one regime', () => {
    // 0.9 and 1.35 mm in turn, 100 a second: volume-weighted mean 1.25 mm (hand: (0.9⁴+1.35⁴)/(0.9³+1.35³)).
    const drops = Array.from({ length: 900 }, (_, k) => drop(0.5 + 0.01 * k, k % 2 ? 0.9 : 1.35));
    const mixed = nameRun(steady, seen({ drops }), []);
    expect(mixed.meanDropRatio).toBeCloseTo(1.2469 / 1.2, 3);
    expect(mixed.shares.spray).toBeGreaterThan(0.99);
    // The same drops apart in time are two regimes. Rejects a mean over the whole run.
    const apart = [...drops].sort((a, b) => a.diameterMm - b.diameterMm);
    const sorted = apart.map((d, k) => ({ ...d, timeS: 0.5 + 0.01 * k }));
    const { shares } = nameRun(steady, seen({ drops: sorted }), []);
    // 1.35³ of 1.35³ + 0.9³: 77 % of the metal.
    expect(shares.globular).toBeCloseTo(0.771, 2);
  });

  it('never calls repelled drops spray, however small', () => {
    // Weld. World 2015, introduction: drops get smaller with current in pure CO2 but stay non-axial.
    const drops = Array.from({ length: 100 }, (_, k) => drop(1 + 0.01 * k, 0.9, 'repelled'));
    const truth = nameRun(steady, seen({ drops }), []);
    expect([truth.mode, truth.freeFlight]).toEqual(['globular', 'repelled']);
  });

  it('goes by the regime where the wire is thin: in line and fast, at more than its diameter', () => {
    // Soderstrom & Mendez 2008: under 0.035 in and 30 % CO2 drops are never thinner than the wire.
    const thin = { ...steady, wire: { ...steady.wire, diameterMm: 0.8 } };
    const run = (release: Release, everyS: number, scenario = thin) => {
      const drops = Array.from({ length: 200 }, (_, k) => drop(1 + everyS * k, 0.96, release));
      const { mode, unambiguous } = nameRun(scenario, seen({ drops }), []);
      return [mode, unambiguous];
    };
    expect(run('column', 0.004)).toEqual(['spray', true]);
    expect(run('hanging', 0.004)).toEqual(['globular', true]);
    // 40 a second is no spray, in line or not.
    expect(run('column', 0.025)).toEqual(['globular', false]);
    // In 50 % CO2 the rule does not hold.
    const rich = { ...thin, gas: { group: 'M31', co2Percent: 50, o2Percent: 0 } };
    expect(run('column', 0.004, rich)[0]).toBe('globular');
  });

  it('tells projected from streaming spray by the size of the drops', () => {
    const form = (mm: number) =>
      nameRun(steady, seen({ drops: [drop(1, mm, 'column'), drop(2, mm, 'column')] }), [])
        .freeFlight;
    expect([form(1.15), form(0.95), form(0.8)]).toEqual(['projected', 'projected', 'streaming']);
  });

  it('says what was set wrong, and names the mode by the metal all the same', () => {
    const cold = { ...steady, setWrong: 'cold' as const };
    const truth = nameRun(cold, seen({ drops: [drop(1, 2)] }), []);
    expect([truth.setWrong, truth.mode]).toEqual(['cold', 'globular']);
    expect(nameRun(steady, seen({}), []).setWrong).toBeNull();
  });

  it('calls the same drops pulsed when the source pulses', () => {
    const pulsed = { ...steady, source: { kind: 'pulsed' } } as unknown as typeof steady;
    const drops = [1, 2, 3, 4].map((t) => drop(t, 1.15));
    const truth = nameRun(pulsed, seen({ drops, pulses: [1, 2, 3, 4] }), []);
    expect(truth.mode).toBe('pulsed-spray');
    expect(truth.dropsPerPulse).toBe(1);
    expect(truth.sourceProgramme).toBe('pulsed');
    // Drops of twice the wire are globular on any source.
    const large = nameRun(pulsed, seen({ drops: [drop(1, 2.4)], pulses: [1] }), []);
    expect(large.mode).toBe('globular');
  });

  it('splits at a change of settings and calls the whole mixed', () => {
    const drops = Array.from({ length: 40 }, (_, k) => drop(5 + 0.1 * k, 0.9));
    const shorts = Array.from({ length: 40 }, (_, k) => short(0.1 * k, 1));
    const truth = nameRun(steady, seen({ drops, shorts }), [4.9]);
    expect(truth.segments.map((s) => s.mode)).toEqual(['short-circuit', 'spray']);
    expect(truth.segments.map((s) => [s.startS, s.endS])).toEqual([
      [0, 4.9],
      [4.9, 10],
    ]);
    expect(truth.mode).toBe('mixed');
    expect(truth.unambiguous).toBe(false);
  });

  it('names nothing when no metal crossed', () => {
    const truth = nameRun(steady, seen({ shorts: [short(1, 0)] }), []);
    expect(truth.mode).toBeNull();
    expect(truth.segments).toEqual([]);
    expect(truth.unambiguous).toBe(false);
  });
});
