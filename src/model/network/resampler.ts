import type { Kernels } from './kernels.js';

/** Stopband of the filter, dB; aliases fall above the highest band that is listened to. */
const STOP_DB = 60;
/** End of the passband and beginning of the stopband, in shares of the lower of the two Nyquist rates. */
const PASS = 0.9;
const STOP = 1.05;
/** Most phases kept; rates with more are read at the nearest phase. */
const MOST_PHASES = 2048;
/** Outputs worked out at a time. */
const AT_A_TIME = 1024;

/**
 * Sound at another rate, block by block, by a windowed sinc (Kaiser's window and formulas: J. F. Kaiser, 1974, as in
 * Oppenheim and Schafer). Output `m` stands at the input time `m / toHz`; zeros before the first and after the last
 * sample.
 */
export class Resampler {
  readonly #step: number;
  readonly #phases: number;
  readonly #half: number;
  readonly #filters: (Float64Array | undefined)[];
  readonly #fromHz: number;
  readonly #toHz: number;
  readonly #kernels: Kernels | null;
  /** Where the filters lie in the memory of the kernels, by phase. */
  readonly #keptAt: number[] = [];
  #held: Float64Array;
  /** Samples held, and the number of the first of them. */
  #count = 0;
  #first: number;
  #next = 0;
  #taken = 0;

  constructor(fromHz: number, toHz: number, kernels: Kernels | null = null) {
    this.#kernels = kernels;
    this.#fromHz = fromHz;
    this.#toHz = toHz;
    this.#step = fromHz / toHz;
    const whole = Number.isInteger(fromHz) && Number.isInteger(toHz);
    this.#phases = whole ? Math.min(MOST_PHASES, toHz / divisor(fromHz, toHz)) : MOST_PHASES;
    const nyquist = Math.min(fromHz, toHz) / 2;
    const width = (2 * Math.PI * (STOP - PASS) * nyquist) / fromHz;
    // A filter is a multiple of eight long.
    this.#half = 4 * Math.ceil((STOP_DB - 8) / (2.285 * width) / 8);
    this.#filters = new Array<Float64Array | undefined>(this.#phases);
    this.#held = new Float64Array(8 * this.#half);
    this.#first = -this.#half;
    this.#count = this.#half;
  }

  /** Takes samples in; gives those that can be told by now. */
  push(samples: ArrayLike<number>): Float64Array {
    if (this.#fromHz === this.#toHz) return Float64Array.from(samples);
    this.#hold(samples);
    this.#taken += samples.length;
    return this.#give(Number.POSITIVE_INFINITY);
  }

  /** The rest, after the last sample. */
  flush(): Float64Array {
    if (this.#fromHz === this.#toHz) return new Float64Array(0);
    this.#hold(new Float64Array(this.#half + 2));
    return this.#give(Math.ceil(this.#taken / this.#step));
  }

  #hold(samples: ArrayLike<number>): void {
    const need = this.#count + samples.length;
    if (need > this.#held.length) {
      const grown = new Float64Array(2 * need);
      grown.set(this.#held.subarray(0, this.#count));
      this.#held = grown;
    }
    this.#held.set(samples, this.#count);
    this.#count = need;
  }

  #give(end: number): Float64Array {
    const last = this.#first + this.#count - 1 - this.#half;
    const ready = Math.max(0, Math.min(end, Math.floor(last / this.#step)) - this.#next);
    const out = new Float64Array(ready);
    for (let at = 0; at < ready; at += AT_A_TIME) {
      const part = out.subarray(at, at + AT_A_TIME);
      if (this.#kernels === null) this.#plain(part);
      else this.#bySimd(part, this.#kernels);
    }
    const done = this.#placeOf(this.#next).from;
    if (done > 0) {
      this.#held.copyWithin(0, done, this.#count);
      this.#count -= done;
      this.#first += done;
    }
    return out;
  }

  /** First sample held that output `m` needs, and the phase of its filter. */
  #placeOf(m: number): { from: number; phase: number } {
    const exact = m * this.#step;
    const at = Math.floor(exact);
    const phase = Math.round((exact - at) * this.#phases);
    const from = at - this.#half + 1 - this.#first;
    return phase === this.#phases ? { from: from + 1, phase: 0 } : { from, phase };
  }

  #plain(out: Float64Array): void {
    const held = this.#held;
    for (let k = 0; k < out.length; k++, this.#next++) {
      const { from, phase } = this.#placeOf(this.#next);
      const filter = this.#filter(phase);
      // Four sums at a time, since each addition waits for the one before.
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let i = 0, j = from; i < filter.length; i += 4, j += 4) {
        a += filter[i]! * held[j]!;
        b += filter[i + 1]! * held[j + 1]!;
        c += filter[i + 2]! * held[j + 2]!;
        d += filter[i + 3]! * held[j + 3]!;
      }
      out[k] = a + b + (c + d);
    }
  }

  #bySimd(out: Float64Array, kernels: Kernels): void {
    const length = 2 * this.#half;
    const start = this.#placeOf(this.#next).from;
    const end = this.#placeOf(this.#next + out.length - 1).from + length;
    const heard = kernels.region('samples', Math.ceil((AT_A_TIME + 1) * this.#step) + length + 8);
    kernels.write(heard, this.#held.subarray(start, end));
    for (let k = 0; k < out.length; k++, this.#next++) {
      const { from, phase } = this.#placeOf(this.#next);
      this.#keptAt[phase] ??= kernels.keep(Float32Array.from(this.#filter(phase)));
      out[k] = kernels.dot(this.#keptAt[phase]!, heard + from - start, length);
    }
  }

  /** Weights of the samples around an output that lies this phase after a sample. */
  #filter(phase: number): Float64Array {
    const kept = this.#filters[phase];
    if (kept !== undefined) return kept;
    const half = this.#half;
    const corner = (((PASS + STOP) / 2) * Math.min(this.#fromHz, this.#toHz)) / this.#fromHz;
    const beta = 0.5842 * (STOP_DB - 21) ** 0.4 + 0.07886 * (STOP_DB - 21);
    const made = new Float64Array(2 * half);
    for (let i = 0; i < 2 * half; i++) {
      const t = i - half + 1 - phase / this.#phases;
      const u = t / half;
      const x = Math.PI * corner * t;
      const sinc = Math.abs(x) < 1e-9 ? 1 : Math.sin(x) / x;
      if (Math.abs(u) <= 1)
        made[i] = (corner * sinc * bessel(beta * Math.sqrt(1 - u * u))) / bessel(beta);
    }
    this.#filters[phase] = made;
    return made;
  }
}

/** Modified Bessel function of the first kind, order 0, by its power series. */
function bessel(x: number): number {
  let term = 1;
  let sum = 1;
  for (let k = 1; term > 1e-12 * sum; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
