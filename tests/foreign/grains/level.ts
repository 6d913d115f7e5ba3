import type { Dice } from './dice.js';
import { rms, scale } from './filters.js';

/**
 * Gain control of a recorder: a quick or slow follower of the level that presses it toward one
 * value.
 */
export function controlGain(dice: Dice, samples: Float32Array, rateHz: number): void {
  const attackS = dice.ratio(0.003, 0.08);
  const releaseS = dice.ratio(Math.max(0.02, attackS), 0.25);
  const press = dice.between(0.4, 1);
  const goal = rms(samples) || 1;
  const floor = 10 ** (-dice.between(15, 45) / 20);
  const block = 16;
  const up = 1 - Math.exp(-block / (rateHz * attackS));
  const down = 1 - Math.exp(-block / (rateHz * releaseS));
  let power = goal * goal;
  let gain = 1;
  for (let from = 0; from < samples.length; from += block) {
    const end = Math.min(samples.length, from + block);
    let sum = 0;
    for (let k = from; k < end; k++) sum += (samples[k] as number) ** 2;
    const now = sum / (end - from);
    power += (now > power ? up : down) * (now - power);
    const level = Math.max(Math.sqrt(power) / goal, floor);
    const wanted = level ** -press;
    const slope = (wanted - gain) / block;
    for (let k = from; k < end; k++) {
      gain += slope;
      samples[k] = (samples[k] as number) * gain;
    }
  }
}

/**
 * Clips well inside the signal, in place; full scale afterwards is ±1 or a little less.
 *
 * @param sigma where the clip stands, in effective values of the loud part
 */
export function clip(dice: Dice, samples: Float32Array, sigma: number, loud: number): void {
  const hard = dice.chance(0.7);
  const skew = dice.chance(0.3) ? dice.between(0.7, 1) : 1;
  const rail = dice.chance(0.8) ? 1 : dice.between(0.6, 0.98);
  const gain = 1 / Math.max(1e-9, sigma * loud);
  for (let k = 0; k < samples.length; k++) {
    const x = gain * (samples[k] as number);
    const y = hard ? Math.min(1, Math.max(-skew, x)) : Math.tanh(x);
    samples[k] = rail * y;
  }
}

/** Brings the peak to a drawn level below full scale; gives the gain it took. */
export function intoRange(dice: Dice, samples: Float32Array): number {
  let peak = 1e-9;
  for (const x of samples) peak = Math.max(peak, Math.abs(x));
  const gain = dice.ratio(0.12, 0.95) / peak;
  scale(samples, gain);
  return gain;
}

/** Rounds to a number of bits, in place, and holds to full scale. */
export function quantise(samples: Float32Array, bits: number): void {
  const steps = 2 ** (bits - 1);
  for (let k = 0; k < samples.length; k++) {
    const y = Math.round((samples[k] as number) * steps) / steps;
    samples[k] = Math.min(1 - 1 / steps, Math.max(-1, y));
  }
}
