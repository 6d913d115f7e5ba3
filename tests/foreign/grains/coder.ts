import type { Dice } from './dice.js';
import { Fourier } from './fourier.js';

/** How a lossy coder throws away. */
export interface CoderSettings {
  /** Lines to a frame, a power of 2. */
  lines: number;
  /** Nothing is kept above this frequency, Hz. */
  bandwidthHz: number;
  /** Noise it allows itself below the level of each band, dB. */
  marginDb: number;
  /** Bands weaker than this below the loudest of their frame are dropped, dB. */
  dropDb: number;
}

/**
 * Draws settings like those of a file of poor rate: walls at 5.5-13 kHz (as in common encoders'
 * defaults).
 */
export function drawCoder(dice: Dice, rateHz: number): CoderSettings {
  return {
    lines: dice.pick([128, 256, 512, 512, 1024]),
    bandwidthHz: Math.min(0.5 * rateHz, dice.ratio(3400, 13000)),
    marginDb: dice.between(1, 14),
    dropDb: dice.between(18, 50),
  };
}

/** Rounds one frame of lines, band by band, in place. */
function roundLines(line: Float64Array, settings: CoderSettings, rateHz: number): void {
  const count = settings.lines;
  const keep = Math.floor((2 * count * settings.bandwidthHz) / rateHz);
  const edges = [0];
  // Bands widen with frequency, about a fifth of it.
  for (let e = 4; e < count; e = Math.ceil(e * 1.22)) edges.push(e);
  edges.push(count);
  const power = edges.slice(1).map((to, b) => {
    const from = edges[b] as number;
    let sum = 0;
    for (let k = from; k < to; k++) sum += (line[k] as number) ** 2;
    return sum / (to - from);
  });
  const loudest = Math.max(...power);
  for (let b = 0; b < power.length; b++) {
    const from = edges[b] as number;
    const to = edges[b + 1] as number;
    const p = power[b] as number;
    const gone = from >= keep || p <= loudest * 10 ** (-settings.dropDb / 10);
    // A step of q gives noise of q²/12.
    const step = Math.sqrt(12 * p * 10 ** (-settings.marginDb / 10));
    for (let k = from; k < to; k++) {
      line[k] = gone || step === 0 || k >= keep ? 0 : Math.round((line[k] as number) / step) * step;
    }
  }
}

/**
 * A lossy coder of our own: overlapping cosine transform (MDCT with sine window), rounding band by
 * band, and
 * back. No delay.
 */
export function codeLossy(
  samples: Float32Array,
  rateHz: number,
  settings: CoderSettings,
): Float32Array {
  const n = settings.lines;
  const size = 2 * n;
  const fourier = new Fourier(size);
  const out = new Float32Array(samples.length);
  const re = new Float64Array(size);
  const im = new Float64Array(size);
  const line = new Float64Array(n);
  const shift = 0.5 + n / 2;
  const window = Float64Array.from({ length: size }, (_, k) =>
    Math.sin((Math.PI * (k + 0.5)) / size),
  );
  const table = (length: number, angle: (k: number) => number) => ({
    c: Float64Array.from({ length }, (_, k) => Math.cos(angle(k))),
    s: Float64Array.from({ length }, (_, k) => Math.sin(angle(k))),
  });
  const before = table(size, (k) => (-Math.PI * k) / size);
  const after = table(n, (k) => (-Math.PI * shift * (k + 0.5)) / n);
  const spread = table(n, (k) => (-Math.PI * shift * k) / n);
  const last = table(size, (k) => (-Math.PI * (k + shift)) / size);
  for (let from = -n; from < samples.length; from += n) {
    for (let k = 0; k < size; k++) {
      const x = (samples[from + k] ?? 0) * (window[k] as number);
      re[k] = x * (before.c[k] as number);
      im[k] = x * (before.s[k] as number);
    }
    fourier.run(re, im);
    for (let k = 0; k < n; k++) {
      line[k] =
        (re[k] as number) * (after.c[k] as number) - (im[k] as number) * (after.s[k] as number);
    }
    roundLines(line, settings, rateHz);
    // The cosine is even, so the way back goes through the same transform.
    re.fill(0);
    im.fill(0);
    for (let k = 0; k < n; k++) {
      re[k] = (line[k] as number) * (spread.c[k] as number);
      im[k] = (line[k] as number) * (spread.s[k] as number);
    }
    fourier.run(re, im);
    for (let k = 0; k < size; k++) {
      const at = from + k;
      if (at < 0 || at >= out.length) continue;
      const y =
        (re[k] as number) * (last.c[k] as number) - (im[k] as number) * (last.s[k] as number);
      out[at] = (out[at] as number) + (2 / n) * y * (window[k] as number);
    }
  }
  return out;
}

/** Speech coding of a call: 8-bit logarithmic steps (µ-law, open standard G.711), in place. */
export function codeMuLaw(samples: Float32Array): void {
  const mu = 255;
  for (let k = 0; k < samples.length; k++) {
    const x = Math.min(1, Math.max(-1, samples[k] as number));
    const squeezed = Math.round((127 * Math.log1p(mu * Math.abs(x))) / Math.log1p(mu)) / 127;
    samples[k] = (Math.sign(x) * Math.expm1(squeezed * Math.log1p(mu))) / mu;
  }
}
