import { describe, expect, it } from 'vitest';
import {
  type AcousticScenario,
  type ArcRun,
  MONOPOLE_AT_1M,
  publishedDipCase,
  simulateSound,
} from '../../../../../src/lab/simulate/index.js';
import { rms } from '../../../../../src/lab/simulate/noise/noise-tools.js';

const RATE = 100_000;

/** A run whose power is a given function of time, with nothing else in it. */
function runWith(power: (t: number) => number, seconds: number): ArcRun {
  const count = Math.round(seconds * RATE);
  const powerW = Float32Array.from({ length: count }, (_, i) => power(i / RATE));
  const none = { 'short-circuit': 0, globular: 0, spray: 0, 'pulsed-spray': 0 };
  return {
    scenario: { ...publishedDipCase(), openStart: true },
    electricalRateHz: RATE,
    voltageV: new Float64Array(count),
    currentA: new Float64Array(count),
    powerRateHz: RATE,
    powerW,
    arcCurrentA: new Float32Array(count),
    durationS: seconds,
    truth: {
      shorts: [],
      drops: [],
      arcOn: [],
      segments: [],
      mode: null,
      shares: none,
      meanDropRatio: Number.NaN,
      dropsPerPulse: Number.NaN,
      sourceProgramme: 'steady',
      unambiguous: false,
    },
    balance: {
      fedMm3: 0,
      meltedMm3: 0,
      extensionMm3: 0,
      transferredLiquidMm3: 0,
      hangingLiquidMm3: 0,
      sourceJ: 0,
      slopeJ: 0,
      chokeJ: 0,
      loadJ: 0,
    },
  };
}

const bare: AcousticScenario = {
  family: 'monopole',
  seed: 1,
  rateHz: 44100,
  distanceM: 0.5,
  pulseGain: 1,
  pulseHz: 40000,
  exponent: 1,
  negativeShare: 1,
  jetShare: 0,
  modes: [],
  hissPa: 0,
  hissHz: 5000,
  hissQ: 0.5,
  hissPower: 1,
  hissLength: 0,
  hissFollowHz: 1000,
  flutter: {
    own: 0,
    ownHz: 10,
    depth: { 'short-circuit': 0, globular: 0, spray: 0, 'pulsed-spray': 0 },
    hz: 10,
  },
  swells: null,
  rumblePa: 0,
  dropPa: 0,
  dropS: 1e-4,
  crackleRate: 0,
  crackleShare: 0,
  cracklePa: 0,
  gasPa: 0,
  gasLeadS: 0,
  gasTailS: 0,
  clickPa: 0,
  feederPa: 0,
  feederHz: 100,
  eventSounds: null,
};

describe('simulateSound', () => {
  it('has the monopole constant for air', () => {
    // (gamma − 1)/(4·pi·c²) with gamma 1.4 and c 343 m/s, by hand: 2.71e-7 Pa·s/W at 1 m.
    expect(MONOPOLE_AT_1M).toBeCloseTo(2.71e-7, 9);
  });

  it('turns a steady rise of power into a steady pressure, and the end of it into silence', () => {
    // 5 kW over 20 ms at 0.5 m: 2.71e-7/0.5 · 5000/0.02 = 0.1355 Pa. Rejects p ∝ VI instead of its rate.
    const run = runWith((t) => Math.min(5000, Math.max(0, (t - 0.01) / 0.02) * 5000), 0.06);
    const sound = simulateSound(run, bare);
    expect(sound[Math.round(0.02 * 44100)]).toBeCloseTo(0.1355, 3);
    expect(Math.abs(sound[Math.round(0.05 * 44100)]!)).toBeLessThan(1e-3);
  });

  it('gives a rippling arc the published-constant level', () => {
    // 0.5 V · 250 A at 250 Hz: 125 W; 2.71e-7/0.5 · 2·pi·250 · 125/√2 = 0.0753 Pa rms (hand calculation).
    const run = runWith((t) => 6000 + 125 * Math.sin(2 * Math.PI * 250 * t), 0.5);
    const sound = simulateSound(run, bare).subarray(4410);
    const rms = Math.sqrt(sound.reduce((sum, p) => sum + p * p, 0) / sound.length);
    expect(rms).toBeCloseTo(0.0753, 3);
  });

  it('arrives r/c later and 1/r weaker', () => {
    // 3.43 m is 10 ms at 343 m/s. Rejects a delay that is missing or counted twice.
    const power = (t: number) => 5000 / (1 + Math.exp(-(t - 0.03) / 2e-4));
    const at = (distanceM: number) => {
      const sound = simulateSound(runWith(power, 0.1), { ...bare, distanceM });
      let peak = 0;
      sound.forEach((p, i) => {
        if (Math.abs(p) > Math.abs(sound[peak]!)) peak = i;
      });
      return { timeS: peak / 44100, value: sound[peak]! };
    };
    const near = at(0.343);
    const far = at(3.43);
    expect(far.timeS - near.timeS).toBeCloseTo(0.009, 4);
    expect(near.value / far.value).toBeGreaterThan(9.8);
    expect(near.value / far.value).toBeLessThan(10.2);
    expect(near.value).toBeGreaterThan(0);
  });

  it('lets the hiss swell at a drop and flutter, by what those specs say', () => {
    const run = runWith(() => 5000, 0.6);
    const arcCurrentA = new Float32Array(run.powerW.length).fill(200);
    const drop = { timeS: 0.3, diameterMm: run.scenario.wire.diameterMm };
    const arc = { ...run, arcCurrentA, truth: { ...run.truth, drops: [drop] } };
    const hissing = { ...bare, pulseGain: 0, hissPa: 1, distanceM: 1 };
    const still = simulateSound(arc, hissing);
    const swells = { short: 0, drop: 2, pulse: 0, dropPower: 1, spread: 0, decayS: 1e3 };
    const swelled = simulateSound(arc, { ...hissing, swells });
    const flutter = { ...bare.flutter, own: 0.5, ownHz: 20 };
    const fluttered = simulateSound(arc, { ...hissing, flutter });
    const gainOf = (sound: Float64Array, fromS: number, toS: number) => {
      const [from, to] = [Math.round(fromS * 44100), Math.round(toS * 44100)];
      return rms(sound, from, to) / rms(still, from, to);
    };
    // A rise of 2 over rest that hardly dies away: three times as loud after the drop, alike before it.
    expect(gainOf(swelled, 0.1, 0.29)).toBeCloseTo(1, 9);
    expect(gainOf(swelled, 0.32, 0.58)).toBeCloseTo(3, 2);
    // Deviation 0.5 (ln) at 20 Hz: tenths of a second differ by more than an even gain of 10 % would let them.
    const ratios = [0.1, 0.2, 0.3, 0.4, 0.5].map((t) => gainOf(fluttered, t, t + 0.05));
    expect(Math.max(...ratios) / Math.min(...ratios)).toBeGreaterThan(1.2);
  });
});
