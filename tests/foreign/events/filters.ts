import type { Rng } from './rng.js';

/**
 * A second-order section, direct form, already divided by a0 (cookbook forms of R. Bristow-
 * Johnson).
 */
export interface Section {
  b0: number;
  b1: number;
  b2: number;
  a1: number;
  a2: number;
}

export type SectionKind = 'lowpass' | 'highpass' | 'bandpass' | 'peak';

/**
 * Designs a section. `gainDb` counts for a peak only; the frequency is held below 0.48 of the
 * rate.
 */
export function section(
  kind: SectionKind,
  hz: number,
  q: number,
  rateHz: number,
  gainDb = 0,
): Section {
  const w = (2 * Math.PI * Math.min(hz, 0.48 * rateHz)) / rateHz;
  const cos = Math.cos(w);
  const alpha = Math.sin(w) / (2 * q);
  const amp = 10 ** (gainDb / 40);
  let b = [1, 0, 0];
  let a0 = 1 + alpha;
  let a2 = 1 - alpha;
  if (kind === 'lowpass') b = [(1 - cos) / 2, 1 - cos, (1 - cos) / 2];
  else if (kind === 'highpass') b = [(1 + cos) / 2, -1 - cos, (1 + cos) / 2];
  else if (kind === 'bandpass') b = [alpha, 0, -alpha];
  else {
    b = [1 + alpha * amp, -2 * cos, 1 - alpha * amp];
    a0 = 1 + alpha / amp;
    a2 = 1 - alpha / amp;
  }
  const [b0 = 1, b1 = 0, b2 = 0] = b;
  return { b0: b0 / a0, b1: b1 / a0, b2: b2 / a0, a1: (-2 * cos) / a0, a2: a2 / a0 };
}

/** Filters in place through all sections in turn and gives the same array back. */
export function filter(x: Float32Array, sections: readonly Section[]): Float32Array {
  for (const { b0, b1, b2, a1, a2 } of sections) {
    let s1 = 0;
    let s2 = 0;
    for (let i = 0; i < x.length; i++) {
      const v = x[i] as number;
      const y = b0 * v + s1;
      s1 = b1 * v - a1 * y + s2;
      s2 = b2 * v - a2 * y;
      x[i] = y;
    }
  }
  return x;
}

/** Root mean square from `from` up to `to` (samples); 0 for an empty stretch. */
export function rms(x: Float32Array, from = 0, to = x.length): number {
  let s = 0;
  for (let i = from; i < to; i++) s += (x[i] as number) ** 2;
  return to > from ? Math.sqrt(s / (to - from)) : 0;
}

/**
 * Median of the root mean squares of 20 ms frames: the level most of the time, whatever single
 * bangs do.
 */
export function typicalLevel(x: Float32Array, rateHz: number, from = 0, to = x.length): number {
  const hop = Math.max(1, Math.round(0.02 * rateHz));
  const frames: number[] = [];
  for (let i = from; i + hop <= to; i += hop) frames.push(rms(x, i, i + hop));
  frames.sort((a, b) => a - b);
  return frames[frames.length >> 1] ?? 0;
}

/** Multiplies in place. */
export function scale(x: Float32Array, gain: number): Float32Array {
  for (let i = 0; i < x.length; i++) x[i] = (x[i] as number) * gain;
  return x;
}

/** Adds `gain` times `y` to `x` from sample `at` on; what falls outside is left out. */
export function mix(x: Float32Array, y: Float32Array, at = 0, gain = 1): Float32Array {
  const to = Math.min(y.length, x.length - at);
  for (let i = Math.max(0, -at); i < to; i++) {
    x[at + i] = (x[at + i] as number) + gain * (y[i] as number);
  }
  return x;
}

/** White noise of unit variance. */
export function white(rng: Rng, length: number): Float32Array {
  const x = new Float32Array(length);
  for (let i = 0; i < length; i++) x[i] = rng.fuzz();
  return x;
}

/**
 * Noise that wanders slowly: band below `hz`, unit variance, worked out on a coarse grid and
 * joined by lines.
 */
export function wander(rng: Rng, length: number, hz: number, rateHz: number): Float32Array {
  const hop = Math.max(1, Math.floor(rateHz / (16 * hz)));
  const points = Math.ceil(length / hop) + 2;
  const keep = Math.exp((-2 * Math.PI * hz * hop) / rateHz);
  const grid = new Float32Array(points);
  let a = rng.normal();
  for (let k = 0; k < points; k++) {
    grid[k] = a;
    a = keep * a + Math.sqrt(1 - keep * keep) * rng.normal();
  }
  const x = new Float32Array(length);
  for (let i = 0; i < length; i++) {
    const k = Math.floor(i / hop);
    const f = i / hop - k;
    x[i] = (grid[k] as number) * (1 - f) + (grid[k + 1] as number) * f;
  }
  return x;
}

/** Changes the sample rate with a windowed sinc whose cut-off lies at 0.46 of the lower rate. */
export function resample(x: Float32Array, fromHz: number, toHz: number): Float32Array {
  if (fromHz === toHz) return x.slice();
  const length = Math.floor((x.length * toHz) / fromHz);
  const y = new Float32Array(length);
  const cut = (0.92 * Math.min(fromHz, toHz)) / fromHz;
  const half = Math.ceil(10 / cut);
  const phases = 64;
  const width = 2 * half;
  const table = new Float32Array((phases + 1) * width);
  for (let p = 0; p <= phases; p++) {
    for (let k = 0; k < width; k++) {
      const t = k - half + 1 - p / phases;
      const window = Math.abs(t) < half ? 0.5 + 0.5 * Math.cos((Math.PI * t) / half) : 0;
      const arg = Math.PI * cut * t;
      table[p * width + k] = cut * window * (Math.abs(arg) < 1e-9 ? 1 : Math.sin(arg) / arg);
    }
  }
  for (let i = 0; i < length; i++) {
    const at = (i * fromHz) / toHz;
    const whole = Math.floor(at);
    const row = Math.round((at - whole) * phases) * width;
    const first = whole - half + 1;
    const from = Math.max(0, -first);
    const to = Math.min(width, x.length - first);
    let s = 0;
    for (let k = from; k < to; k++) s += (table[row + k] as number) * (x[first + k] as number);
    y[i] = s;
  }
  return y;
}
