import { describe, expect, it } from 'vitest';
import { createRandom, MODES, type Mode } from '../../../../../src/core/index.js';
import {
  type AcousticScenario,
  type ArcRun,
  type DropTruth,
  drawAcoustics,
  MONOPOLE_AT_1M,
  publishedDipCase,
  simulateDrySound,
  simulateSound,
} from '../../../../../src/lab/simulate/index.js';
import { rms } from '../../../../../src/lab/simulate/noise/noise-tools.js';
import { drawSwells } from '../../../../../src/lab/simulate/sound/swells.js';

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
      freeFlight: null,
      setWrong: null,
      unambiguous: false,
    },
    pulsesS: [],
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
  flutter: { fast: 0, fastHz: 10, slow: 0, slowHz: 10 },
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
    const diameterMm = run.scenario.wire.diameterMm;
    const drop: DropTruth = { timeS: 0.3, diameterMm, release: 'hanging' };
    const arc = { ...run, arcCurrentA, truth: { ...run.truth, drops: [drop] } };
    const hissing = { ...bare, pulseGain: 0, hissPa: 1, distanceM: 1 };
    const still = simulateSound(arc, hissing);
    const swells = {
      electrical: 0,
      electricalPower: 1,
      drop: 2,
      dropPower: 1,
      spread: 0,
      decayS: 1e3,
    };
    const swelled = simulateSound(arc, { ...hissing, swells });
    const flutter = { ...bare.flutter, slow: 0.5, slowHz: 20 };
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

  it('gives the same sound to the same events, whatever the metal is said to have done', () => {
    // Everything audible on: no table of modes may reach the drawing. Rejects flutter, spatter or clicks by mode.
    const run = runWith((t) => 5000 + 300 * Math.sin(2 * Math.PI * 90 * t), 0.5);
    const arcCurrentA = new Float32Array(run.powerW.length).fill(200);
    const loud: AcousticScenario = {
      ...drawAcoustics(createRandom(3), { family: 'voiced' }),
      swells: drawSwells(createRandom(4)),
      flutter: { fast: 0.1, fastHz: 30, slow: 0.3, slowHz: 10 },
      crackleRate: 40,
      cracklePa: 1,
      crackleShare: 1,
      dropPa: 1,
    };
    const named = (mode: Mode) => {
      const shares = { ...run.truth.shares, [mode]: 1 };
      const truth = {
        ...run.truth,
        mode,
        shares,
        drops: [{ timeS: 0.2, diameterMm: 1, release: 'hanging' as const }],
        arcOn: [{ startS: 0, endS: 0.5 }],
        segments: [{ startS: 0, endS: 0.5, mode, shares }],
      };
      return simulateSound({ ...run, arcCurrentA, truth }, loud);
    };
    const first = named('short-circuit');
    expect(rms(first)).toBeGreaterThan(0);
    for (const mode of MODES) expect(named(mode)).toEqual(first);
  });
});

describe('simulateDrySound', () => {
  const short = { startS: 0.2, endS: 0.203, transferredMm3: 1, incipient: false };
  // Down to 1 kW in the short, back within 0.1 ms, and a ripple of 300 Hz throughout.
  const power = (t: number) =>
    5000 -
    4000 * (t < 0.2 ? 0 : Math.max(0, Math.min(1, (0.2031 - t) / 1e-4))) +
    20 * Math.sin(2 * Math.PI * 300 * t);
  const run = { ...runWith(power, 0.4), truth: { ...runWith(power, 0.4).truth, shorts: [short] } };

  it('adds up to the whole sound', () => {
    const acoustic = drawAcoustics(createRandom(8), { family: 'voiced', rateHz: 16_000 });
    const whole = simulateSound(run, acoustic);
    const { rest, events } = simulateDrySound(run, acoustic);
    const sum = rest.map((v, i) => Object.values(events).reduce((all, part) => all + part[i]!, v));
    const peak = whole.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
    for (let i = 0; i < sum.length; i++)
      expect(Math.abs(sum[i]! - whole[i]!)).toBeLessThan(1e-9 * peak);
  });

  it('gives the contact and the re-ignition their own change of power, and nothing of the ripple', () => {
    const { rest, events } = simulateDrySound(run, { ...bare, distanceM: 1 });
    // Times at the arc; at 1 m everything is 1/343 s late.
    const at = (x: Float64Array, fromS: number, toS: number) =>
      rms(x, Math.round((fromS + 1 / 343) * 44100), Math.round((toS + 1 / 343) * 44100));
    expect(Object.keys(events).sort()).toEqual(['reignition', 'short']);
    const { short: contact, reignition } = events;
    // Far from both events their parts are silent; each sounds at its own edge, ten times over what is left there.
    for (const part of [contact!, reignition!]) {
      expect(at(part, 0, 0.19)).toBeLessThan(1e-20);
      expect(at(part, 0.22, 0.39)).toBeLessThan(1e-9);
    }
    expect(at(contact!, 0.1998, 0.2005)).toBeGreaterThan(10 * at(rest, 0.1998, 0.2005));
    expect(at(reignition!, 0.2025, 0.2035)).toBeGreaterThan(10 * at(rest, 0.2025, 0.2035));
    // 20 W at 300 Hz: 2.71e-7 · 2·pi·300 · 20/√2 = 0.00722 Pa rms at 1 m, all of it in the rest (hand calculation).
    expect(at(rest, 0.05, 0.15)).toBeCloseTo(0.00722, 4);
  });
});
