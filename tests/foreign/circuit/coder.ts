/** Lossy coders of this world: a block coder with coarse bands, and telephone companding. */
import { Biquad } from './filters.js';
import type { Random } from './random.js';

/**
 * Overlapping cosine transform (MDCT with a sine window) whose bands are kept in coarse steps:
 * quiet bands fall silent, loud ones get noisy. In place, without delay.
 */
export function blockCoder(x: Float32Array, rateHz: number, r: Random): void {
  const half = r.pick([128, 256, 512]);
  const cutHz = Math.min(0.48 * rateHz, r.logRange(0.22 * rateHz, 0.46 * rateHz));
  const stepDb = r.range(3, 11); // noise below the band's own level, dB
  const gateDb = r.range(22, 42); // bands so far below the loudest fall silent
  const n = x.length;
  const size = 2 * half;
  const blocks = Math.ceil(n / half) + 1;
  const window = new Float32Array(size);
  for (let i = 0; i < size; i++) window[i] = Math.sin((Math.PI * (i + 0.5)) / size);
  const bands: number[] = [0];
  while ((bands[bands.length - 1] as number) < half) {
    const last = bands[bands.length - 1] as number;
    bands.push(Math.min(half, last + Math.max(4, Math.round(last * 0.22))));
  }
  const cutBin = Math.round((cutHz / (0.5 * rateHz)) * half);
  const out = new Float32Array(n + size);
  const frame = new Float32Array(size);
  const spec = new Float32Array(half);
  const transform = new CosineTransform(half);
  for (let b = 0; b < blocks; b++) {
    const at = (b - 1) * half;
    for (let i = 0; i < size; i++) {
      const k = at + i;
      frame[i] = k >= 0 && k < n ? (x[k] as number) * (window[i] as number) : 0;
    }
    transform.forward(frame, spec);
    coarse(spec, bands, cutBin, stepDb, gateDb);
    transform.backward(spec, frame);
    for (let i = 0; i < size; i++) {
      const k = at + i;
      if (k >= 0) out[k] = (out[k] as number) + (frame[i] as number) * (window[i] as number);
    }
  }
  x.set(out.subarray(0, n));
}

function coarse(
  spec: Float32Array,
  bands: number[],
  cutBin: number,
  stepDb: number,
  gateDb: number,
): void {
  const level: number[] = [];
  let top = 0;
  for (let k = 0; k + 1 < bands.length; k++) {
    let s = 0;
    const from = bands[k] as number;
    const to = bands[k + 1] as number;
    for (let i = from; i < to; i++) s += (spec[i] as number) ** 2;
    level[k] = Math.sqrt(s / (to - from));
    top = Math.max(top, level[k] as number);
  }
  const gate = top * 10 ** (-gateDb / 20);
  for (let k = 0; k + 1 < bands.length; k++) {
    const l = level[k] as number;
    const step = 3.46 * l * 10 ** (-stepDb / 20) + 1e-12; // uniform noise: step / sqrt(12)
    for (let i = bands[k] as number; i < (bands[k + 1] as number); i++) {
      spec[i] = l < gate || i >= cutBin ? 0 : step * Math.round((spec[i] as number) / step);
    }
  }
}

/** MDCT of a frame of 2N samples by a complex transform of N/2 points (textbook method). */
class CosineTransform {
  private readonly n: number;
  private readonly re: Float64Array;
  private readonly im: Float64Array;
  private readonly twC: Float64Array;
  private readonly twS: Float64Array;
  private readonly fold: Float64Array;

  constructor(n: number) {
    this.n = n;
    const q = n / 2;
    this.re = new Float64Array(q);
    this.im = new Float64Array(q);
    this.fold = new Float64Array(n);
    this.twC = new Float64Array(q);
    this.twS = new Float64Array(q);
    for (let k = 0; k < q; k++) {
      this.twC[k] = Math.cos((Math.PI * (k + 0.25)) / n);
      this.twS[k] = Math.sin((Math.PI * (k + 0.25)) / n);
    }
  }

  /** Frame (2N, windowed) to N coefficients. */
  forward(frame: Float32Array, spec: Float32Array): void {
    const { n, fold } = this;
    const h = n / 2;
    for (let i = 0; i < h; i++) {
      // Blocks a b c d: first half of the folded frame is -c_r - d, second half a - b_r.
      fold[i] = -(frame[3 * h - 1 - i] as number) - (frame[3 * h + i] as number);
      fold[h + i] = (frame[i] as number) - (frame[n - 1 - i] as number);
    }
    this.cosine4(fold);
    for (let i = 0; i < n; i++) spec[i] = fold[i] as number;
  }

  /** N coefficients to a frame of 2N, to be windowed and added to its neighbours. */
  backward(spec: Float32Array, frame: Float32Array): void {
    const { n, fold } = this;
    const h = n / 2;
    for (let i = 0; i < n; i++) fold[i] = spec[i] as number;
    this.cosine4(fold);
    for (let i = 0; i < h; i++) {
      frame[3 * h - 1 - i] = -(fold[i] as number);
      frame[3 * h + i] = -(fold[i] as number);
      frame[i] = fold[h + i] as number;
      frame[n - 1 - i] = -(fold[h + i] as number);
    }
  }

  /** Orthonormal cosine transform of type IV, its own inverse, in place. */
  private cosine4(x: Float64Array): void {
    const { n, re, im, twC, twS } = this;
    const q = n / 2;
    for (let k = 0; k < q; k++) {
      const a = x[2 * k] as number;
      const b = x[n - 1 - 2 * k] as number;
      const c = twC[k] as number;
      const s = twS[k] as number;
      re[k] = a * c + b * s;
      im[k] = b * c - a * s;
    }
    fourier(re, im);
    const scale = Math.sqrt(2 / n);
    for (let k = 0; k < q; k++) {
      const c = twC[k] as number;
      const s = twS[k] as number;
      const a = re[k] as number;
      const b = im[k] as number;
      x[2 * k] = scale * (a * c + b * s);
      x[n - 1 - 2 * k] = -scale * (b * c - a * s);
    }
  }
}

/** Plain radix-2 Fourier transform in place; the length is a power of two. */
function fourier(re: Float64Array, im: Float64Array): void {
  const n = re.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i < j) {
      const a = re[i] as number;
      re[i] = re[j] as number;
      re[j] = a;
      const b = im[i] as number;
      im[i] = im[j] as number;
      im[j] = b;
    }
  }
  for (let len = 2; len <= n; len <<= 1) {
    const half = len >> 1;
    for (let k = 0; k < half; k++) {
      const c = Math.cos((2 * Math.PI * k) / len);
      const s = -Math.sin((2 * Math.PI * k) / len);
      for (let i = k; i < n; i += len) {
        const j = i + half;
        const a = (re[j] as number) * c - (im[j] as number) * s;
        const b = (re[j] as number) * s + (im[j] as number) * c;
        re[j] = (re[i] as number) - a;
        im[j] = (im[i] as number) - b;
        re[i] = (re[i] as number) + a;
        im[i] = (im[i] as number) + b;
      }
    }
  }
}

/** Telephone: voice band and logarithmic 8-bit steps (mu-law curve, mu = 255; a public standard). */
export function telephone(x: Float32Array, rateHz: number, r: Random): void {
  Biquad.highPass(r.range(180, 320), rateHz).run(x);
  Biquad.lowPass(Math.min(0.45 * rateHz, r.range(2900, 3600)), rateHz).run(x);
  const steps = r.pick([127, 127, 63, 31]);
  for (let i = 0; i < x.length; i++) {
    const v = Math.max(-1, Math.min(1, x[i] as number));
    const c = Math.log1p(255 * Math.abs(v)) / Math.log(256);
    const q = Math.round(c * steps) / steps;
    x[i] = (Math.sign(v) * (256 ** q - 1)) / 255;
  }
}
