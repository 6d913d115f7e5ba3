import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import {
  type ArcRun,
  type DropTruth,
  publishedDipCase,
} from '../../../../../src/lab/simulate/index.js';
import { eventTimes } from '../../../../../src/lab/simulate/sound/event-gates.js';
import type { EventSoundSpec } from '../../../../../src/lab/simulate/sound/event-sound-spec.js';
import { addVoices } from '../../../../../src/lab/simulate/sound/event-sounds.js';
import { SoundParts } from '../../../../../src/lab/simulate/sound/sound-parts.js';

const RATE = 44100;
const WIRE = publishedDipCase().wire.diameterMm;
const spec: EventSoundSpec = {
  dropShare: 1,
  dropPa: 1,
  dropPower: 2,
  dropSpread: 0,
  dropLagS: 0,
  puffAttackS: 5e-4,
  puffDecayS: 3e-3,
  puffHz: 3000,
  puffQ: 0.5,
  thumpShare: 0,
  thumpHz: 200,
  thumpS: 5e-3,
  burstShare: 0,
  crackPa: 0,
  crackPower: 1,
  crackSpread: 0,
  crackNoise: 0,
  crackTailS: 1e-3,
  crackHz: 3000,
};

/** One second of arc with these drops and ruptures, and the power given in it. */
function runWith(
  truth: Partial<ArcRun['truth']>,
  power: (index: number) => number = () => 0,
): ArcRun {
  const none = { shorts: [], drops: [], meanDropRatio: Number.NaN };
  return {
    scenario: publishedDipCase(),
    powerRateHz: 10_000,
    powerW: Float32Array.from({ length: 10_001 }, (_, i) => power(i)),
    arcCurrentA: new Float32Array(10_001).fill(250),
    durationS: 1,
    truth: { ...none, ...truth },
  } as unknown as ArcRun;
}
const drop = (timeS: number, ratio: number): DropTruth => ({
  timeS,
  diameterMm: ratio * WIRE,
  release: 'hanging',
});
const short = (endS: number) => ({
  startS: endS - 0.003,
  endS,
  transferredMm3: 1,
  incipient: false,
});
const sound = (run: ArcRun, change: Partial<EventSoundSpec>) => {
  const into = new SoundParts(RATE, false);
  addVoices(into, run, { ...spec, ...change }, eventTimes(run), RATE, createRandom(4));
  return into.whole();
};
const rms = (x: Float64Array) => Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);

describe('voices', () => {
  it('breathes when a drop leaves, and at no other time', () => {
    const x = sound(runWith({ drops: [drop(0.5, 1)] }), {});
    expect(rms(x.subarray(0, 0.5 * RATE - 2))).toBe(0);
    expect(rms(x.subarray(0.5 * RATE, 0.51 * RATE))).toBeGreaterThan(0.05);
    expect(rms(x.subarray(0.53 * RATE))).toBe(0);
  });

  it('is louder with the stated power of the drop’s size', () => {
    // Twice the wire's diameter at power 2: four times the pressure. Rejects size by volume or not at all.
    const small = sound(runWith({ drops: [drop(0.5, 1)] }), {});
    const big = sound(runWith({ drops: [drop(0.5, 2)] }), {});
    expect(rms(big) / rms(small)).toBeCloseTo(4, 9);
  });

  it('cracks at the end of a short by how steeply the power comes back', () => {
    // 5 kW within 0.1 ms is strength 1, 10 kW at power 1.5 is 2^1.5 times. Rejects the current alone.
    const change = { dropPa: 0, crackPa: 1, crackPower: 1.5 };
    const back = (watts: number) => (i: number) => (i > 4000 ? watts : 0);
    const one = sound(runWith({ shorts: [short(0.4)] }, back(5000)), change);
    const two = sound(runWith({ shorts: [short(0.4)] }, back(10_000)), change);
    expect(rms(one.subarray(0, Math.round(0.4 * RATE)))).toBe(0);
    expect(Math.max(...one)).toBeCloseTo(1, 9);
    expect(Math.max(...two)).toBeCloseTo(2 ** 1.5, 6);
  });

  it('cracks once as each pulse of the current rises, by the same measure', () => {
    // 50 Hz from 60 to 400 A: 50 rises through 230 A in a second, the power rises by 2.5 kW. Rejects falls, and
    // every sample above.
    const up = (i: number) => i % 200 >= 100 && i % 200 < 120;
    const run = runWith({}, (i) => (up(i) ? 2500 : 0));
    const pulsed = { kind: 'pulsed', baseA: 60, peakA: 400, frequencyHz: 50 };
    const scenario = { ...run.scenario, source: pulsed } as unknown as ArcRun['scenario'];
    const arcCurrentA = run.arcCurrentA.map((_, i) => (up(i) ? 400 : 60));
    const change = { crackPa: 2, crackTailS: 1e-9 };
    const x = sound({ ...run, scenario, arcCurrentA }, change);
    const clicks = x.filter((v, i) => v !== 0 && (x[i - 1] ?? 0) === 0).length;
    expect(clicks).toBe(50);
    expect(Math.max(...x)).toBeCloseTo(1, 9);
    expect(rms(sound({ ...run, arcCurrentA }, change))).toBe(0);
  });

  it('hears the stated share of the drops', () => {
    const drops = Array.from({ length: 400 }, (_, i) => drop(0.0024 * i + 0.01, 1));
    const change = { dropShare: 0.25, puffDecayS: 2e-4, puffAttackS: 1e-4 };
    const x = sound(runWith({ drops }), change);
    const heard = drops.filter(({ timeS }) => {
      const at = Math.round(timeS * RATE);
      return rms(x.subarray(at, at + 40)) > 0;
    }).length;
    // 100 expected of 400, standard deviation 8.7 (binomial); four of them allowed.
    expect(Math.abs(heard - 100)).toBeLessThan(35);
  });
});
