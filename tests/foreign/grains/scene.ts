import type { Dice } from './dice.js';
import { Biquad, rms, scale } from './filters.js';

/** Draws a sound of some kind: `length` samples of effective value about 1 (0 for silence). */
export type Scene = (dice: Dice, length: number, rateHz: number) => Float32Array;

/** White noise. */
export function white(dice: Dice, length: number): Float32Array {
  const out = new Float32Array(length);
  for (let k = 0; k < length; k++) out[k] = dice.noise();
  return out;
}

/** Noise whose power falls with frequency: three leaky sums at spread corner frequencies. */
export function pink(dice: Dice, length: number): Float32Array {
  const out = new Float32Array(length);
  let a = 0;
  let b = 0;
  let c = 0;
  for (let k = 0; k < length; k++) {
    const w = dice.noise();
    a = 0.997 * a + 0.055 * w;
    b = 0.963 * b + 0.16 * w;
    c = 0.57 * c + 0.5 * w;
    out[k] = a + b + c + 0.18 * w;
  }
  return unit(out);
}

/** Noise in a band. */
export function band(
  dice: Dice,
  length: number,
  rateHz: number,
  hz: number,
  q: number,
): Float32Array {
  return unit(Biquad.band(Math.min(hz, 0.44 * rateHz), rateHz, q).run(white(dice, length)));
}

/** Brings the effective value to 1, in place; leaves silence alone. */
export function unit(samples: Float32Array): Float32Array {
  const level = rms(samples);
  return level > 1e-9 ? scale(samples, 1 / level) : samples;
}

/** Adds one struck sound: noise and partials that die away. */
export function strike(
  out: Float32Array,
  rateHz: number,
  atS: number,
  gain: number,
  body: { hz: number; decayS: number; gain: number }[],
  noiseDecayS: number,
  dice: Dice,
): void {
  const at = Math.round(atS * rateHz);
  const noiseEnd = Math.min(out.length, at + Math.ceil(6 * noiseDecayS * rateHz));
  const keep = Math.exp(-1 / (noiseDecayS * rateHz));
  let level = gain;
  for (let k = Math.max(0, at); k < noiseEnd; k++) {
    out[k] = (out[k] as number) + level * (dice.next() * 2 - 1);
    level *= keep;
  }
  for (const part of body) {
    const end = Math.min(out.length, at + Math.ceil(6 * part.decayS * rateHz));
    const turn = (2 * Math.PI * part.hz) / rateHz;
    const fade = Math.exp(-1 / (part.decayS * rateHz));
    let height = gain * part.gain;
    for (let k = Math.max(0, at); k < end; k++) {
      out[k] = (out[k] as number) + height * Math.sin(turn * (k - at));
      height *= fade;
    }
  }
}
