import type { Line } from './filters.js';

/** In-place transform of length 2^k, real and imaginary parts apart. */
class Transform {
  private readonly cosines: Float64Array;
  private readonly sines: Float64Array;
  private readonly order: Uint32Array;
  constructor(readonly size: number) {
    this.cosines = Float64Array.from({ length: size / 2 }, (_, k) =>
      Math.cos((2 * Math.PI * k) / size),
    );
    this.sines = Float64Array.from({ length: size / 2 }, (_, k) =>
      Math.sin((2 * Math.PI * k) / size),
    );
    const bits = Math.log2(size);
    this.order = Uint32Array.from({ length: size }, (_, k) => {
      let turned = 0;
      for (let b = 0; b < bits; b++) if ((k >> b) & 1) turned |= 1 << (bits - 1 - b);
      return turned;
    });
  }

  run(re: Float64Array, im: Float64Array, back: boolean): void {
    const { size, order, cosines, sines } = this;
    for (let k = 0; k < size; k++) {
      const t = order[k] ?? 0;
      if (t <= k) continue;
      [re[k], re[t]] = [re[t] ?? 0, re[k] ?? 0];
      [im[k], im[t]] = [im[t] ?? 0, im[k] ?? 0];
    }
    for (let half = 1; half < size; half *= 2) {
      const stride = size / (2 * half);
      for (let start = 0; start < size; start += 2 * half) {
        for (let j = 0; j < half; j++) {
          const c = cosines[j * stride] ?? 0;
          const s = (back ? 1 : -1) * (sines[j * stride] ?? 0);
          const a = start + j;
          const b = a + half;
          const br = re[b] ?? 0;
          const bi = im[b] ?? 0;
          const tr = br * c - bi * s;
          const ti = br * s + bi * c;
          re[b] = (re[a] ?? 0) - tr;
          im[b] = (im[a] ?? 0) - ti;
          re[a] = (re[a] ?? 0) + tr;
          im[a] = (im[a] ?? 0) + ti;
        }
      }
    }
  }
}

/**
 * A coarse coder: frames of 1,024 samples that overlap by half, cut off at `topHz`, rounded in each
 * band to
 * steps `noiseDb` under the band's level, small parts dropped. It smears pulses over a frame as
 * lossy files do
 * (published: frames of some 10 to 26 ms). Two frames ride in one transform, as real and imaginary
 * part.
 */
export function codeLossy(
  x: Line,
  topHz: number,
  noiseDb: number,
  rateHz: number,
): Float32Array<ArrayBuffer> {
  const size = 1024;
  const hop = size / 2;
  const transform = new Transform(size);
  const window = Float64Array.from({ length: size }, (_, n) =>
    Math.sin((Math.PI * (n + 0.5)) / size),
  );
  const y = new Float32Array(x.length);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const top = Math.min(hop - 1, Math.floor((topHz / rateHz) * size));
  const coarse = 10 ** (-noiseDb / 20) * 2.4;
  for (let at = -hop; at < x.length; at += 2 * hop) {
    for (let n = 0; n < size; n++) {
      const w = window[n] ?? 0;
      re[n] = w * (x[at + n] ?? 0);
      im[n] = w * (x[at + hop + n] ?? 0);
    }
    transform.run(re, im, false);
    for (let low = 0, wide = 4; low <= hop; low += wide, wide = Math.min(48, wide + 2)) {
      const high = Math.min(hop, low + wide - 1);
      let power = 0;
      for (let k = low; k <= high; k++) power += (re[k] ?? 0) ** 2 + (im[k] ?? 0) ** 2;
      const step = coarse * Math.sqrt(power / (2 * (high - low + 1))) + 1e-12;
      for (let k = low; k <= high; k++) {
        // Mirror bins are treated alike, with their own numbers: both frames stay real.
        const mirror = (size - k) % size;
        const even = [(re[k] ?? 0) + (re[mirror] ?? 0), (im[k] ?? 0) + (im[mirror] ?? 0)];
        const odd = [(re[k] ?? 0) - (re[mirror] ?? 0), (im[k] ?? 0) - (im[mirror] ?? 0)];
        const round = (v = 0) => (k > top ? 0 : Math.round(v / 2 / step) * step);
        const [er, ei] = [round(even[0]), round(even[1])];
        const [or, oi] = [round(odd[0]), round(odd[1])];
        re[k] = er + or;
        im[k] = ei + oi;
        re[mirror] = er - or;
        im[mirror] = ei - oi;
      }
    }
    transform.run(re, im, true);
    for (let n = 0; n < size; n++) {
      const w = (window[n] ?? 0) / size;
      const first = at + n;
      if (first >= 0 && first < y.length) y[first] = (y[first] ?? 0) + w * (re[n] ?? 0);
      const second = first + hop;
      if (second >= 0 && second < y.length) y[second] = (y[second] ?? 0) + w * (im[n] ?? 0);
    }
  }
  return y;
}
