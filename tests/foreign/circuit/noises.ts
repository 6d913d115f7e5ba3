/** Steady and turning sounds of a workshop and of weather. Each gives about unit level. */
import { Biquad, rms } from './filters.js';
import type { Random } from './random.js';

/** Makes `n` samples of one kind of sound. */
export type Noise = (r: Random, rateHz: number, n: number) => Float32Array;

/** Brings a sound to unit root mean square (silence stays silence). */
export function unit(x: Float32Array): Float32Array {
  const s = rms(x);
  if (s > 1e-12) for (let i = 0; i < x.length; i++) x[i] = (x[i] as number) / s;
  return x;
}

export const white: Noise = (r, _rate, n) => {
  const x = new Float32Array(n);
  for (let i = 0; i < n; i++) x[i] = r.noise();
  return x;
};

/** Noise that falls with frequency: slope 1 near pink, 2 near brown. */
export function sloped(r: Random, rate: number, n: number, slope: number): Float32Array {
  const x = new Float32Array(n);
  const corner = [12, 60, 300, 1500, 6000].map((hz) => Math.exp((-2 * Math.PI * hz) / rate));
  const state = [0, 0, 0, 0, 0];
  const gain = [12, 60, 300, 1500, 6000].map(
    (hz) => hz ** (-0.5 * slope + 0.02) * Math.sqrt(1 / hz),
  );
  for (let i = 0; i < n; i++) {
    let s = 0;
    const v = r.noise();
    for (let k = 0; k < 5; k++) {
      const c = corner[k] as number;
      state[k] = c * (state[k] as number) + v;
      s += (gain[k] as number) * (state[k] as number) * (1 - c) * Math.sqrt(rate);
    }
    x[i] = s;
  }
  return unit(x);
}

export const pink: Noise = (r, rate, n) => sloped(r, rate, n, 0);

/** Noise in a band, drawn wide or narrow. */
export function band(
  r: Random,
  rate: number,
  n: number,
  lowHz: number,
  highHz: number,
): Float32Array {
  const x = white(r, rate, n);
  Biquad.highPass(Math.min(lowHz, 0.3 * rate), rate).run(x);
  Biquad.lowPass(Math.min(highHz, 0.46 * rate), rate).run(x);
  return unit(x);
}

/** A steady tone row: harmonics of a slowly wandering pitch. */
export function harmonics(
  r: Random,
  rate: number,
  n: number,
  hz: number,
  count: number,
  fall: number,
  wander: number,
): Float32Array {
  const x = new Float32Array(n);
  const re: number[] = [];
  const im: number[] = [];
  for (let k = 1; k <= count && k * hz * 1.2 < 0.46 * rate; k++) {
    const a = k ** -fall * r.range(0.3, 1);
    const p = r.range(0, 6.28);
    re.push(a * Math.cos(p));
    im.push(a * Math.sin(p));
  }
  let phase = 0;
  let w = 0;
  let goal = 0;
  for (let i = 0; i < n; i++) {
    if (i % 2000 === 0) goal = wander * r.gauss();
    w += 2e-4 * (goal - w);
    phase += (2 * Math.PI * hz * (1 + Math.max(-0.18, Math.min(0.18, w)))) / rate;
    // Powers of one rotation give all harmonics.
    const c1 = Math.cos(phase);
    const s1 = Math.sin(phase);
    let c = 1;
    let d = 0;
    let s = 0;
    for (let k = 0; k < re.length; k++) {
      const t = c * c1 - d * s1;
      d = c * s1 + d * c1;
      c = t;
      s += (re[k] as number) * d + (im[k] as number) * c;
    }
    x[i] = s;
  }
  return unit(x);
}

/** Adds sounds with gains. */
export function mix(...parts: [Float32Array, number][]): Float32Array {
  const out = new Float32Array((parts[0] as [Float32Array, number])[0].length);
  for (const [x, g] of parts)
    for (let i = 0; i < out.length; i++) out[i] = (out[i] as number) + g * (x[i] as number);
  return unit(out);
}

/** Strikes: decaying ringing at given times. */
export function strikes(
  r: Random,
  rate: number,
  n: number,
  timesS: readonly number[],
  hz: readonly [number, number],
  decayS: readonly [number, number],
  noisy: number,
): Float32Array {
  const x = new Float32Array(n);
  const modes = Array.from({ length: r.int(2, 5) }, () => ({
    hz: Math.min(r.logRange(hz[0], hz[1]), 0.45 * rate),
    tau: r.logRange(decayS[0], decayS[1]),
    a: r.range(0.3, 1),
  }));
  for (const t of timesS) {
    const from = Math.round(t * rate);
    const amp = r.logNormal(1, 0.35);
    for (const m of modes) {
      const len = Math.min(n - from, Math.round(5 * m.tau * rate));
      const a = amp * m.a * r.range(0.6, 1.2);
      const keep = Math.exp(-1 / (m.tau * rate));
      let e = a;
      const c1 = Math.cos((2 * Math.PI * m.hz) / rate);
      const s1 = Math.sin((2 * Math.PI * m.hz) / rate);
      let c = 1;
      let d = 0;
      for (let k = 0; k < len; k++) {
        if (from + k >= 0) {
          const s = noisy > 0 ? noisy * r.noise() + (1 - noisy) * d : d;
          x[from + k] = (x[from + k] as number) + e * s;
        }
        e *= keep;
        const t = c * c1 - d * s1;
        d = c * s1 + d * c1;
        c = t;
      }
    }
  }
  return unit(x);
}

/** Times of a nearly even beat. */
export function beat(r: Random, lengthS: number, hz: number, jitter: number): number[] {
  const out: number[] = [];
  for (let t = r.next() / hz; t < lengthS; t += Math.max(0.1, 1 + jitter * r.gauss()) / hz)
    out.push(t);
  return out;
}

/** Times that come at random with a mean rate. */
export function random(r: Random, lengthS: number, hz: number): number[] {
  const out: number[] = [];
  for (let t = 0; ; ) {
    t += -Math.log(1 - r.next()) / hz;
    if (t >= lengthS) return out;
    out.push(t);
  }
}
