import { describe, expect, it } from 'vitest';
import { publishedDipCase } from '../../../../../src/lab/simulate/index.js';
import { nameRun, type Observed } from '../../../../../src/lab/simulate/physics/label.js';

const arcOn = [{ startS: 0, endS: 10 }];
const drop = (timeS: number, diameterMm: number) => ({ timeS, diameterMm });
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

  it('parts globular from spray at the wire diameter, and doubts what is near it', () => {
    const named = (mm: number) => nameRun(steady, seen({ drops: [drop(1, mm), drop(2, mm)] }), []);
    expect([named(1.3).mode, named(1.3).unambiguous]).toEqual(['globular', false]);
    expect([named(1.4).mode, named(1.4).unambiguous]).toEqual(['globular', true]);
    expect([named(1.1).mode, named(1.1).unambiguous]).toEqual(['spray', false]);
    expect([named(1.0).mode, named(1.0).unambiguous]).toEqual(['spray', true]);
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
