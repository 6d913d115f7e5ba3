import type { Rng } from './rng.js';

/** Fourier transform in place, radix 2; `inverse` leaves out the division by the length. */
function fft(re: Float64Array, im: Float64Array, inverse: boolean): void {
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
    const angle = ((inverse ? 2 : -2) * Math.PI) / len;
    const half = len >> 1;
    for (let k = 0; k < half; k++) {
      const wr = Math.cos(angle * k);
      const wi = Math.sin(angle * k);
      for (let i = k; i < n; i += len) {
        const j = i + half;
        const xr = (re[j] as number) * wr - (im[j] as number) * wi;
        const xi = (re[j] as number) * wi + (im[j] as number) * wr;
        re[j] = (re[i] as number) - xr;
        im[j] = (im[i] as number) - xi;
        re[i] = (re[i] as number) + xr;
        im[i] = (im[i] as number) + xi;
      }
    }
  }
}

/**
 * How a coder loses: wall in Hz, step of the values against the band, share of bands kept, noise
 * taken out.
 */
export interface CoderSetting {
  wallHz: number;
  step: number;
  kept: number;
  suppress: number;
  block: number;
}

/** Draws a coder; walls from the table of domain sheet 8 (4-17 kHz), the rest own choice. */
export function drawCoder(rng: Rng, rateHz: number, call: boolean): CoderSetting {
  return {
    wallHz: call
      ? 0.48 * rateHz
      : Math.min(0.49 * rateHz, rng.pick([4000, 5500, 7000, 10000, 11000, 15100, 17000])),
    step: rng.logRange(0.5, call ? 3 : 2.2),
    kept: rng.range(0.45, 1),
    suppress: rng.chance(0.3) ? rng.range(0.4, 1.2) : 0,
    block: call ? 256 : rng.pick([512, 1024, 2048]),
  };
}

/**
 * Codes and decodes: half-overlapping sine windows, bands that widen upwards, values rounded to a
 * step tied to
 * the band's own level, weak bands left out, optional subtraction of the steady part. Smears a
 * click over a block.
 */
export function code(x: Float32Array, rateHz: number, setting: CoderSetting): Float32Array {
  const { block, step, kept, suppress } = setting;
  const half = block / 2;
  const wall = Math.floor((setting.wallHz / rateHz) * block);
  const edges = [1];
  for (let e = 1; e < wall; ) {
    e = Math.min(wall, e + Math.max(4, Math.round(e * 0.18)));
    edges.push(e);
  }
  const bands = edges.length - 1;
  const floor = new Float64Array(bands).fill(-1);
  const window = Float64Array.from({ length: block }, (_, i) =>
    Math.sin((Math.PI * (i + 0.5)) / block),
  );
  const out = new Float32Array(x.length);
  const re = new Float64Array(block);
  const im = new Float64Array(block);
  const level = new Float64Array(bands);
  for (let at = -half; at < x.length; at += half) {
    im.fill(0);
    for (let i = 0; i < block; i++) re[i] = (x[at + i] ?? 0) * (window[i] as number);
    fft(re, im, false);
    for (let b = 0; b < bands; b++) {
      const from = edges[b] as number;
      const to = edges[b + 1] as number;
      let e = 0;
      for (let k = from; k < to; k++) e += (re[k] as number) ** 2 + (im[k] as number) ** 2;
      level[b] = Math.sqrt(e / (2 * (to - from)));
    }
    // bands below a share of the loudest ones are not sent
    const order = Array.from(level).sort((p, q) => q - p);
    const least = order[Math.min(bands - 1, Math.floor(kept * bands))] ?? 0;
    for (let b = 0; b < bands; b++) {
      const l = level[b] as number;
      const f = floor[b] as number;
      // the steady part: falls at once, rises slowly
      floor[b] = f < 0 || l < f ? l : f + 0.02 * (l - f);
      let gain = l < least ? 0 : 1;
      if (suppress > 0) gain *= Math.max(0.08, 1 - (suppress * (floor[b] as number)) / (l + 1e-12));
      const unit = step * l + 1e-12;
      for (let k = edges[b] as number; k < (edges[b + 1] as number); k++) {
        re[k] = gain * unit * Math.round((re[k] as number) / unit);
        im[k] = gain * unit * Math.round((im[k] as number) / unit);
      }
    }
    re[0] = 0;
    im[0] = 0;
    for (let k = wall; k <= half; k++) {
      re[k] = 0;
      im[k] = 0;
    }
    for (let k = 1; k < half; k++) {
      re[block - k] = re[k] as number;
      im[block - k] = -(im[k] as number);
    }
    fft(re, im, true);
    for (let i = Math.max(0, -at); i < block && at + i < x.length; i++) {
      out[at + i] = (out[at + i] as number) + ((re[i] as number) * (window[i] as number)) / block;
    }
  }
  return out;
}

/**
 * Logarithmic eight-bit telephone coding (the mu law of ITU-T G.711 in its smooth form), in place.
 */
export function telephone(x: Float32Array): Float32Array {
  for (let i = 0; i < x.length; i++) {
    const v = Math.max(-1, Math.min(1, x[i] as number));
    const c = Math.round((127 * Math.log1p(255 * Math.abs(v))) / Math.log(256)) / 127;
    x[i] = (Math.sign(v) * (256 ** c - 1)) / 255;
  }
  return x;
}

/** Packets of 20 ms that never came: silence or the last one once more. In place. */
export function losePackets(rng: Rng, x: Float32Array, rateHz: number): Float32Array {
  const size = Math.round(0.02 * rateHz);
  const odds = rng.range(0.002, 0.03);
  const repeat = rng.chance(0.6);
  for (let at = size; at + size <= x.length; at += size) {
    if (!rng.chance(odds)) continue;
    if (repeat) x.copyWithin(at, at - size, at);
    else x.fill(0, at, at + size);
  }
  return x;
}
