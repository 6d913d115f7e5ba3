/** Fractions of an input sample for which the kernel is kept. */
const PHASES = 64;
/** Half the length of the kernel, in output samples. */
const REACH = 5;

interface Kernel {
  /** Input samples on either side. */
  half: number;
  /** Rows of `2·half + 1` weights, one a phase; each row sums to 1. */
  weights: Float64Array;
}

const kernels = new Map<string, Kernel>();

/**
 * Brings samples to a lower rate: a Hann-windowed low-pass at 0.42 of the new rate, computed at the new samples
 * only. `isLive`, where given, says by {@link LIVE_BLOCK} input samples whether anything is there; where
 * nothing is, the result is 0.
 */
export function decimate(
  samples: Float32Array,
  fromHz: number,
  toHz: number,
  count: number,
  isLive?: Uint8Array,
): Float64Array {
  const { half, weights } = kernelFor(fromHz, toHz);
  const width = 2 * half + 1;
  const out = new Float64Array(count);
  const last = samples.length - 1;
  for (let k = 0; k < count; k++) {
    const at = (k / toHz) * fromHz;
    const centre = Math.floor(at);
    const from = centre - half;
    if (isLive !== undefined && !lives(isLive, from, from + width)) continue;
    const row = Math.floor((at - centre) * PHASES) * width;
    let sum = 0;
    if (from >= 0 && from + width <= samples.length) {
      // Two sums at a time: each addition need not wait for the one before. The width is odd.
      let second = 0;
      for (let j = 1; j < width; j += 2) {
        sum += weights[row + j]! * samples[from + j]!;
        second += weights[row + j + 1]! * samples[from + j + 1]!;
      }
      sum += second + weights[row]! * samples[from]!;
    } else {
      for (let j = 0; j < width; j++)
        sum += weights[row + j]! * (samples[Math.max(0, Math.min(last, from + j))] ?? 0);
    }
    out[k] = sum;
  }
  return out;
}

/** Input samples that share one mark of `isLive`. */
export const LIVE_BLOCK = 32;

function lives(isLive: Uint8Array, from: number, to: number): boolean {
  const end = Math.min(isLive.length - 1, Math.floor(to / LIVE_BLOCK));
  for (let b = Math.max(0, Math.floor(from / LIVE_BLOCK)); b <= end; b++)
    if (isLive[b]) return true;
  return false;
}

function kernelFor(fromHz: number, toHz: number): Kernel {
  const key = `${fromHz} ${toHz}`;
  let kernel = kernels.get(key);
  if (kernel === undefined) {
    kernel = makeKernel(fromHz, toHz);
    kernels.set(key, kernel);
  }
  return kernel;
}

function makeKernel(fromHz: number, toHz: number): Kernel {
  const reach = (REACH * fromHz) / toHz;
  const half = Math.ceil(reach);
  const width = 2 * half + 1;
  const cut = (0.84 * toHz) / fromHz;
  const weights = new Float64Array(PHASES * width);
  for (let p = 0; p < PHASES; p++) {
    let sum = 0;
    for (let j = 0; j < width; j++) {
      const x = j - half - (p + 0.5) / PHASES;
      const sinc = x === 0 ? 1 : Math.sin(Math.PI * cut * x) / (Math.PI * cut * x);
      const window = Math.abs(x) < reach ? 0.5 + 0.5 * Math.cos((Math.PI * x) / reach) : 0;
      weights[p * width + j] = sinc * window;
      sum += sinc * window;
    }
    for (let j = 0; j < width; j++) weights[p * width + j]! /= sum;
  }
  return { half, weights };
}
