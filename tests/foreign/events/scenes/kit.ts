import { filter, rms, type SectionKind, scale, section } from '../filters.js';
import type { Rng } from '../rng.js';

/** A sound without an arc: `length` samples at `rateHz`, about unit level. */
export type Scene = (rng: Rng, length: number, rateHz: number) => Float32Array;

/** Brings a sound to unit level; silence stays silent. */
export function level(x: Float32Array): Float32Array {
  const r = rms(x);
  return r > 1e-9 ? scale(x, 1 / r) : x;
}

/** Filters with one section, in place. */
export function shape(
  x: Float32Array,
  rateHz: number,
  kind: SectionKind,
  hz: number,
  q = 0.7,
  gainDb = 0,
): Float32Array {
  return filter(x, [section(kind, hz, q, rateHz, gainDb)]);
}

/** Adds a dying tone or, at `noise` 1, a dying burst of noise at sample `at`. */
export function strike(
  rng: Rng,
  out: Float32Array,
  rateHz: number,
  at: number,
  sound: { hz: number; decayS: number; noise: number; size: number },
): void {
  const n = Math.min(out.length - at, Math.ceil(5 * sound.decayS * rateHz));
  const keep = Math.exp(-1 / (sound.decayS * rateHz));
  let e = sound.size;
  const w = (2 * Math.PI * sound.hz) / rateHz;
  for (let i = Math.max(0, -at); i < n; i++) {
    const v = (1 - sound.noise) * Math.sin(w * i) + sound.noise * rng.fuzz();
    out[at + i] = (out[at + i] as number) + e * v;
    e *= keep;
  }
}

/** Adds a sum of harmonics whose frequency may wander: `hz(t)` and the size of each harmonic. */
export function harmonics(
  out: Float32Array,
  rateHz: number,
  hz: (timeS: number) => number,
  sizes: readonly number[],
): Float32Array {
  let phase = 0;
  for (let i = 0; i < out.length; i++) {
    const f = hz(i / rateHz);
    phase += f / rateHz;
    let v = 0;
    for (let k = 0; k < sizes.length; k++) {
      if ((k + 1) * f > 0.45 * rateHz) break;
      v += (sizes[k] as number) * Math.sin(2 * Math.PI * (k + 1) * phase);
    }
    out[i] = (out[i] as number) + v;
  }
  return out;
}

/** Sizes of `count` harmonics that fall off by `power`, with chance in them. */
export function fallOff(rng: Rng, count: number, power: number): number[] {
  return Array.from({ length: count }, (_, k) => rng.range(0.4, 1.6) / (k + 1) ** power);
}
