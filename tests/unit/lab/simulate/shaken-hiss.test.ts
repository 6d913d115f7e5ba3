import { describe, expect, it } from 'vitest';
import { createRandom, type Mode } from '../../../../src/core/index.js';
import { type ArcRun, publishedDipCase } from '../../../../src/lab/simulate/index.js';
import { type FlutterSpec, flutter } from '../../../../src/lab/simulate/sound/flutter.js';
import { type SwellSpec, swells } from '../../../../src/lab/simulate/sound/swells.js';

const RATE = 2000;
const WIRE = publishedDipCase().wire.diameterMm;

/** An arc of `durationS` with what the test needs in it. */
function runWith(durationS: number, truth: Partial<ArcRun['truth']>): ArcRun {
  return {
    scenario: publishedDipCase(),
    durationS,
    powerRateHz: 10_000,
    arcCurrentA: new Float32Array(durationS * 10_000),
    truth: { shorts: [], drops: [], segments: [], ...truth },
  } as unknown as ArcRun;
}

describe('flutter', () => {
  const still: FlutterSpec = {
    own: 0,
    ownHz: 20,
    depth: { 'short-circuit': 0, globular: 0.3, spray: 0, 'pulsed-spray': 0 },
    hz: 20,
  };
  const shares = (globular: number) => ({
    'short-circuit': 0,
    globular,
    spray: 1 - globular,
    'pulsed-spray': 0,
  });
  const segment = (startS: number, endS: number, globular: number) => ({
    startS,
    endS,
    mode: (globular > 0.5 ? 'globular' : 'spray') as Mode,
    shares: shares(globular),
  });
  const spread = (gain: Float64Array, fromS: number, toS: number) => {
    const level = gain.subarray(fromS * RATE, toS * RATE).map(Math.log);
    const mean = level.reduce((sum, v) => sum + v, 0) / level.length;
    return Math.sqrt(level.reduce((sum, v) => sum + (v - mean) ** 2, 0) / level.length);
  };

  it('shakes each segment by the depths of what crosses in it', () => {
    const segments = [segment(0, 20, 0), segment(20, 40, 1), segment(40, 60, 0.5)];
    const gain = flutter(runWith(60, { segments }), still, RATE, createRandom(5));
    // None, all and half of the metal in big drops: depths of 0, 0.3 and 0.15. Rejects one depth for the whole run.
    // Unit variance at 20 Hz: some 2500 free values in 20 s, so ± 6 % is four sigma.
    expect(spread(gain, 0, 20)).toBe(0);
    expect(Math.abs(spread(gain, 20, 40) / 0.3 - 1)).toBeLessThan(0.06);
    expect(Math.abs(spread(gain, 40, 60) / 0.15 - 1)).toBeLessThan(0.06);
  });

  it('moves by itself outside of segments too, by its own depth', () => {
    const gain = flutter(runWith(20, {}), { ...still, own: 0.1 }, RATE, createRandom(6));
    expect(Math.abs(spread(gain, 0, 20) / 0.1 - 1)).toBeLessThan(0.06);
  });
});

describe('swells', () => {
  const quiet: SwellSpec = { short: 0, drop: 0, pulse: 0, dropPower: 2, spread: 0, decayS: 0.01 };
  const at = (gain: Float64Array, timeS: number) => gain[Math.round(timeS * RATE)]!;

  it('lifts the hiss at a drop by the stated power of its size, and dies away by e in the decay time', () => {
    const drops = [{ timeS: 0.5, diameterMm: 2 * WIRE }];
    const gain = swells(runWith(1, { drops }), { ...quiet, drop: 1.5 }, RATE, createRandom(1));
    // 1.5 · 2² = 6 over rest. Rejects a lift that adds to silence, and one that rings before the drop.
    expect(at(gain, 0.499)).toBe(1);
    expect(at(gain, 0.5)).toBeCloseTo(7, 9);
    expect(at(gain, 0.51)).toBeCloseTo(1 + 6 / Math.E, 9);
  });

  it('lifts it at the end of a short and as a pulse rises, not at their other edges', () => {
    const shorts = [{ startS: 0.2, endS: 0.3, transferredMm3: 1, incipient: false }];
    const run = runWith(1, { shorts });
    const pulsed = { kind: 'pulsed', baseA: 60, peakA: 400 };
    const scenario = { ...run.scenario, source: pulsed } as unknown as ArcRun['scenario'];
    const arcCurrentA = run.arcCurrentA.map((_, i) => (i >= 7000 && i < 8000 ? 400 : 60));
    const spec = { ...quiet, short: 2, pulse: 3, decayS: 1e-3 };
    const gain = swells({ ...run, scenario, arcCurrentA }, spec, RATE, createRandom(2));
    const lifted = gain.filter((v, i) => v > 1.5 && (gain[i - 1] ?? 1) < v);
    // 1 at rest and a rise of 2, then of 3.
    expect([...lifted].map(Math.round)).toEqual([3, 4]);
    expect(at(gain, 0.3)).toBeCloseTo(3, 9);
    expect(at(gain, 0.7)).toBeCloseTo(4, 9);
  });
});
