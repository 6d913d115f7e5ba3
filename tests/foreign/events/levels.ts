import { rms, scale } from './filters.js';
import type { Rng } from './rng.js';

/**
 * Gain control of a recorder: attack and release of 3-250 ms, slow or fast, more or less strong.
 * In place.
 */
export function gainControl(rng: Rng, x: Float32Array, rateHz: number): Float32Array {
  const attackS = rng.logRange(0.003, 0.06);
  const releaseS = Math.min(0.25, attackS * rng.logRange(2, 30));
  const strength = rng.range(0.4, 1);
  const target = rms(x);
  const most = 10 ** (rng.range(10, 30) / 20);
  const hop = 8;
  const up = 1 - Math.exp(-hop / (attackS * rateHz));
  const down = 1 - Math.exp(-hop / (releaseS * rateHz));
  let level = rng.chance(0.5) ? target : 0.1 * target;
  let gain = 1;
  for (let i = 0; i < x.length; i++) {
    if (i % hop === 0) {
      let e = 0;
      const to = Math.min(x.length, i + hop);
      for (let k = i; k < to; k++) e += (x[k] as number) ** 2;
      const now = Math.sqrt(e / (to - i));
      level += (now > level ? up : down) * (now - level);
      gain = Math.min(most, (target / (level + 1e-9)) ** strength);
    }
    x[i] = (x[i] as number) * gain;
  }
  return x;
}

/** Clips hard at `limit`, in place. */
export function clipHard(x: Float32Array, limit: number): Float32Array {
  for (let i = 0; i < x.length; i++) {
    x[i] = Math.max(-limit, Math.min(limit, x[i] as number));
  }
  return x;
}

/** Bends peaks softly towards `limit`, in place. */
export function clipSoft(x: Float32Array, limit: number): Float32Array {
  for (let i = 0; i < x.length; i++) x[i] = limit * Math.tanh((x[i] as number) / limit);
  return x;
}

/** Rounds to 16 bit and holds to full scale, in place. */
export function toSixteenBit(x: Float32Array): Float32Array {
  for (let i = 0; i < x.length; i++) {
    x[i] = Math.max(-32768, Math.min(32767, Math.round((x[i] as number) * 32768))) / 32768;
  }
  return x;
}

/** Brings the highest peak to `peak`, in place; silence stays silent. */
export function toPeak(x: Float32Array, peak: number): Float32Array {
  let top = 0;
  for (const v of x) top = Math.max(top, Math.abs(v));
  return top > 0 ? scale(x, peak / top) : x;
}
