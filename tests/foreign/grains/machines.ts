import type { Dice } from './dice.js';
import { mix } from './filters.js';
import { band, pink, type Scene, strike, unit } from './scene.js';
import { SlowCurve } from './slow.js';

/** A buzz of many harmonics whose pitch wanders; partials of drawn strength. */
function buzz(
  dice: Dice,
  length: number,
  rateHz: number,
  hz: number,
  count: number,
  tilt: number,
  drift: SlowCurve,
): Float32Array {
  const out = new Float32Array(length);
  const kept = Math.max(1, Math.min(count, Math.floor((0.45 * rateHz) / hz)));
  // One turn is drawn once as a table; the table is read at the wandering pitch.
  const size = 2048;
  const table = new Float32Array(size + 1);
  for (let p = 1; p <= kept; p++) {
    const gain = p ** -tilt * dice.ratio(0.3, 1);
    const phase = dice.between(0, 2 * Math.PI);
    for (let k = 0; k <= size; k++) {
      table[k] = (table[k] as number) + gain * Math.sin(phase + (2 * Math.PI * p * k) / size);
    }
  }
  let place = 0;
  for (let k = 0; k < length; k++) {
    out[k] = table[Math.floor(place * size)] as number;
    place += (hz / rateHz) * (1 + drift.at(k / rateHz));
    place -= Math.floor(place);
  }
  return unit(out);
}

/** Multiplies noise by the turns of a wheel or a piston. */
function beat(
  dice: Dice,
  out: Float32Array,
  rateHz: number,
  hz: number,
  depth: number,
  sharp: number,
  drift: SlowCurve,
): void {
  let place = dice.next();
  for (let k = 0; k < out.length; k++) {
    const wave = (0.5 + 0.5 * Math.cos(2 * Math.PI * place)) ** sharp;
    out[k] = (out[k] as number) * (1 - depth + depth * 2 * wave);
    place += (hz / rateHz) * (1 + drift.at(k / rateHz));
  }
}

/** Mains hum and its harmonics. */
export const hum: Scene = (dice, length, rateHz) => {
  const still = new SlowCurve(dice, length / rateHz, 0, 0.2, 1);
  const out = buzz(
    dice,
    length,
    rateHz,
    dice.pick([50, 60, 100, 120]),
    12,
    dice.between(0.7, 2),
    still,
  );
  mix(out, pink(dice, length), dice.ratio(0.02, 0.3));
  return unit(out);
};

/**
 * An angle grinder: shaft rate near 183 Hz (11,000 rpm, common practice), disc on metal at times.
 */
export const grinder: Scene = (dice, length, rateHz) => {
  const durationS = length / rateHz;
  const drift = new SlowCurve(dice, durationS, dice.between(0.003, 0.04), 0.3, 4);
  const hz = dice.between(110, 190);
  const out = buzz(dice, length, rateHz, hz, 24, dice.between(0.2, 1), drift);
  const disc = band(dice, length, rateHz, dice.ratio(2500, 8000), 0.5);
  beat(dice, disc, rateHz, hz, dice.between(0.1, 0.6), 1, drift);
  const press = new SlowCurve(dice, durationS, 0.8, 0.2, 2);
  for (let k = 0; k < length; k++) {
    out[k] = (out[k] as number) + 1.2 * Math.exp(press.at(k / rateHz)) * (disc[k] as number);
  }
  return unit(out);
};

/** Blades: hiss and rumble with a weak blade tone. */
export const fan: Scene = (dice, length, rateHz) => {
  const drift = new SlowCurve(dice, length / rateHz, 0.003, 0.3, 3);
  const out = pink(dice, length);
  const hz = dice.ratio(30, 300);
  beat(dice, out, rateHz, hz, dice.between(0.05, 0.35), 1, drift);
  mix(out, buzz(dice, length, rateHz, hz, 6, 1, drift), dice.ratio(0.05, 0.8));
  mix(out, band(dice, length, rateHz, dice.ratio(300, 2500), 0.5), dice.ratio(0.2, 1));
  return unit(out);
};

/** A piston machine: bursts of noise at its firing rate with a low tone. */
function pistons(lowHz: number, highHz: number, brightHz: number): Scene {
  return (dice, length, rateHz) => {
    const drift = new SlowCurve(dice, length / rateHz, dice.between(0.005, 0.06), 0.2, 3);
    const hz = dice.ratio(lowHz, highHz);
    const out = band(dice, length, rateHz, brightHz * dice.ratio(0.6, 1.7), 0.5);
    beat(dice, out, rateHz, hz, dice.between(0.5, 0.95), dice.ratio(1, 8), drift);
    mix(out, buzz(dice, length, rateHz, hz, 20, dice.between(0.5, 1.4), drift), dice.ratio(0.4, 2));
    return unit(out);
  };
}

/** Car, forklift or generator. */
export const engine: Scene = pistons(20, 120, 500);
/** Piston compressor. */
export const compressor: Scene = pistons(8, 40, 900);
/** Two-stroke saw. */
export const chainsaw: Scene = pistons(70, 180, 1500);

/** Circular saw or mill: a whine of teeth with hiss. */
export const circularSaw: Scene = (dice, length, rateHz) => {
  const drift = new SlowCurve(dice, length / rateHz, 0.02, 0.3, 3);
  const out = buzz(dice, length, rateHz, dice.ratio(700, 3200), 8, 1, drift);
  mix(out, band(dice, length, rateHz, dice.ratio(2000, 7000), 0.6), dice.ratio(0.3, 2));
  return unit(out);
};

/** A hand saw: strokes of rough noise. */
export const handSaw: Scene = (dice, length, rateHz) => {
  const drift = new SlowCurve(dice, length / rateHz, 0.08, 0.3, 2);
  const out = band(dice, length, rateHz, dice.ratio(900, 4000), 0.6);
  beat(dice, out, rateHz, dice.between(40, 160), 0.6, 1, drift);
  beat(dice, out, rateHz, dice.between(1.5, 4), 0.95, 1.5, drift);
  return unit(out);
};

/** Air ratchet or blow gun: hiss, with or without a rattle. */
export const airTool: Scene = (dice, length, rateHz) => {
  const drift = new SlowCurve(dice, length / rateHz, dice.between(0.01, 0.08), 0.3, 5);
  const out = band(dice, length, rateHz, dice.ratio(2000, 8000), 0.35);
  if (dice.chance(0.6)) {
    beat(dice, out, rateHz, dice.ratio(15, 220), dice.between(0.3, 0.9), dice.ratio(1, 5), drift);
  }
  return unit(out);
};

/** Needle scaler or chipping hammer: hard blows at 30-90 /s, nearly even. */
export const needleScaler: Scene = (dice, length, rateHz) => {
  const out = band(dice, length, rateHz, 5000, 0.4);
  const rate = dice.ratio(28, 90);
  const parts = Array.from({ length: 5 }, () => ({
    hz: dice.ratio(700, 7000),
    decayS: dice.ratio(0.001, 0.008),
    gain: dice.ratio(0.2, 1),
  }));
  for (let t = 0; t < length / rateHz; t += dice.wait(1 / rate, dice.between(0.03, 0.2))) {
    strike(out, rateHz, t, dice.around(6, 0.3), parts, dice.ratio(0.0005, 0.003), dice);
  }
  return unit(out);
};
