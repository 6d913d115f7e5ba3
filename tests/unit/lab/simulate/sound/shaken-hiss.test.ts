import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import {
  type ArcRun,
  type DropTruth,
  publishedDipCase,
} from '../../../../../src/lab/simulate/index.js';
import { eventTimes } from '../../../../../src/lab/simulate/sound/event-gates.js';
import { type FlutterSpec, flutter } from '../../../../../src/lab/simulate/sound/flutter.js';
import { type SwellSpec, swells } from '../../../../../src/lab/simulate/sound/swells.js';

const RATE = 2000;
const POWER_HZ = 10_000;
const WIRE = publishedDipCase().wire.diameterMm;

/** An arc of `durationS` at rest but for what the test needs in it. */
function runWith(durationS: number, truth: Partial<ArcRun['truth']>): ArcRun {
  return {
    scenario: publishedDipCase(),
    durationS,
    powerRateHz: POWER_HZ,
    powerW: new Float32Array(durationS * POWER_HZ),
    arcCurrentA: new Float32Array(durationS * POWER_HZ),
    truth: { shorts: [], drops: [], segments: [], ...truth },
  } as unknown as ArcRun;
}

describe('flutter', () => {
  const still: FlutterSpec = { fast: 0, fastHz: 20, slow: 0, slowHz: 20 };
  const spread = (gain: Float64Array) => {
    const level = gain.map(Math.log);
    const mean = level.reduce((sum, v) => sum + v, 0) / level.length;
    return Math.sqrt(level.reduce((sum, v) => sum + (v - mean) ** 2, 0) / level.length);
  };

  it.each([
    [{ fast: 0.1 }, 0.1],
    [{ slow: 0.3 }, 0.3],
    [{ fast: 0.3, slow: 0.4 }, 0.5],
  ])('shakes the level by the stated deviations: %j', (change, expected) => {
    // Independent parts add by squares: 0.3 and 0.4 to 0.5. Unit variance at 20 Hz: some 2,500 free values in 20 s,
    // so ± 6 % is four sigma. Rejects a part that is left out, and parts that move together.
    const gain = flutter(20 * RATE, { ...still, ...change }, RATE, createRandom(5));
    expect(Math.abs(spread(gain) / expected - 1)).toBeLessThan(0.06);
  });

  it('leaves the level alone at depth 0', () => {
    expect(spread(flutter(RATE, still, RATE, createRandom(6)))).toBe(0);
  });
});

describe('swells', () => {
  const quiet: SwellSpec = {
    electrical: 0,
    electricalPower: 1,
    drop: 0,
    dropPower: 2,
    spread: 0,
    decayS: 0.01,
  };
  const at = (gain: Float64Array | undefined, timeS: number) => gain![Math.round(timeS * RATE)]!;
  const draw = (run: ArcRun, change: Partial<SwellSpec>) =>
    swells(run, { ...quiet, ...change }, eventTimes(run), RATE, createRandom(1));

  it('lifts the hiss at a drop by the stated power of its size, and dies away by e in the decay time', () => {
    const drops: DropTruth[] = [{ timeS: 0.5, diameterMm: 2 * WIRE, release: 'hanging' }];
    const gains = draw(runWith(1, { drops }), { drop: 1.5 });
    // 1.5 · 2² = 6 over rest. Rejects a lift that rings before the drop, and one that counts for another kind.
    expect(Object.keys(gains)).toEqual(['drop']);
    expect(at(gains.drop, 0.499)).toBe(0);
    expect(at(gains.drop, 0.5)).toBeCloseTo(6, 9);
    expect(at(gains.drop, 0.51)).toBeCloseTo(6 / Math.E, 9);
  });

  it('lifts it by the steepness of the power, at a re-ignition as at a pulse', () => {
    // 10 kW within 0.1 ms is strength 2 (1 is 5 kW); at power 1.5 that is 2^1.5 = 2.83 times the rise of 2.
    const shorts = [{ startS: 0.2, endS: 0.3, transferredMm3: 1, incipient: false }];
    const run = runWith(1, { shorts });
    const pulsed = { kind: 'pulsed', baseA: 60, peakA: 400, frequencyHz: 10 };
    const both = {
      ...run,
      scenario: { ...run.scenario, source: pulsed } as unknown as ArcRun['scenario'],
      arcCurrentA: run.arcCurrentA.map((_, i) => (i >= 7000 && i < 8000 ? 400 : 60)),
      powerW: run.powerW.map((_, i) => (i > 3000 ? 10_000 : 0) + (i >= 7000 ? 10_000 : 0)),
    };
    const gains = draw(both, { electrical: 2, electricalPower: 1.5 });
    expect(at(gains.reignition, 0.3)).toBeCloseTo(2 * 2 ** 1.5, 6);
    expect(at(gains.pulse, 0.7)).toBeCloseTo(2 * 2 ** 1.5, 6);
    expect(at(gains.pulse, 0.3)).toBe(0);
    expect(gains.short).toBeUndefined();
  });
});
