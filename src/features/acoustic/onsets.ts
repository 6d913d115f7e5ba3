import { FRAME_RATE_HZ } from './grid.js';

/** The sudden rises of loudness in a window: re-ignitions, pulses, detaching drops. */
export interface Onsets {
  /** Cells at which they stand, ascending. */
  at: number[];
  /** Rises a second. */
  rateHz: number;
  /** Rises of more than two octaves a second: cracks and pops that stand far above the hiss. */
  strongRateHz: number;
  /** Coefficient of variation of the intervals: 0 for a clockwork, about 1 for rain; NaN with too few. */
  intervalCv: number;
  /** Variance over mean of the counts per 51 ms: below 1 for an even arc, above it for fire; NaN with too few. */
  countDispersion: number;
  /** 99th percentile of the rise, octaves of amplitude: how sudden the most sudden moments are. */
  strength: number;
  /** 90th percentile of the rise, octaves. */
  commonRise: number;
}

/** The rise compares the mean of two frames with the mean of six frames that end 0.5 ms before. */
const BEFORE = 6;
const GAP = 2;
/** A rise must be the greatest within ±2 ms. */
const NEIGHBOURHOOD = 8;
/** It must reach this share of the strongest rises, and this much at least (octaves). */
const SHARE = 0.6;
const LEAST_RISE = 0.7;
const STRONG_RISE = 2;
const COUNT_CELLS = 204;
const MINIMUM_EVENTS = 5;

const BINS = 512;
const BIN = 1 / 16;
const LOWEST = -12;

/** Finds onsets in the logarithm of the envelope; keeps its work arrays between windows. */
export class OnsetFinder {
  #rise = new Float64Array(0);
  readonly #histogram = new Uint32Array(BINS);

  /** @param log2Amplitude frame amplitudes as powers of two, 4,000 a second */
  find(log2Amplitude: Float64Array): Onsets {
    const n = log2Amplitude.length;
    if (this.#rise.length !== n) this.#rise = new Float64Array(n);
    this.#computeRise(log2Amplitude);
    const strength = this.#quantile(0.99);
    const commonRise = this.#quantile(0.9);
    const at = this.#peaks(Math.max(LEAST_RISE, SHARE * strength));
    const rateHz = (at.length * FRAME_RATE_HZ) / n;
    const strongRateHz = (this.#peaks(STRONG_RISE).length * FRAME_RATE_HZ) / n;
    if (at.length < MINIMUM_EVENTS)
      return {
        at,
        rateHz,
        strongRateHz,
        intervalCv: NaN,
        countDispersion: NaN,
        strength,
        commonRise,
      };
    const intervals = at.slice(1).map((frame, i) => frame - at[i]!);
    return {
      at,
      rateHz,
      strongRateHz,
      intervalCv: variation(intervals),
      countDispersion: dispersion(at, n),
      strength,
      commonRise,
    };
  }

  #computeRise(log2Amplitude: Float64Array): void {
    const rise = this.#rise.fill(0);
    const histogram = this.#histogram.fill(0);
    const first = BEFORE + GAP;
    let before = 0;
    for (let i = 0; i < BEFORE; i++) before += log2Amplitude[i]!;
    for (let i = first; i < rise.length - 1; i++) {
      const value = (log2Amplitude[i]! + log2Amplitude[i + 1]!) / 2 - before / BEFORE;
      rise[i] = value;
      const bin = Math.min(BINS - 1, Math.max(0, Math.floor((value - LOWEST) / BIN)));
      histogram[bin] = histogram[bin]! + 1;
      before += log2Amplitude[i - GAP]! - log2Amplitude[i - first]!;
    }
  }

  #quantile(share: number): number {
    const total = this.#rise.length - BEFORE - GAP - 1;
    let below = 0;
    for (let bin = 0; bin < BINS; bin++) {
      const count = this.#histogram[bin]!;
      if (below + count >= share * total)
        return LOWEST + BIN * (bin + (share * total - below) / Math.max(1, count));
      below += count;
    }
    return NaN;
  }

  #peaks(threshold: number): number[] {
    const rise = this.#rise;
    const at: number[] = [];
    for (let i = NEIGHBOURHOOD; i < rise.length - NEIGHBOURHOOD; i++) {
      if (rise[i]! <= threshold || !isGreatest(rise, i)) continue;
      at.push(i);
      i += NEIGHBOURHOOD;
    }
    return at;
  }
}

function isGreatest(values: Float64Array, i: number): boolean {
  const height = values[i]!;
  for (let j = 1; j <= NEIGHBOURHOOD; j++)
    if (values[i - j]! > height || values[i + j]! >= height) return false;
  return true;
}

function variation(values: readonly number[]): number {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(squares / values.length) / mean;
}

function dispersion(at: readonly number[], frames: number): number {
  const bins = Math.floor(frames / COUNT_CELLS);
  const counts = new Float64Array(bins);
  for (const frame of at) {
    const bin = Math.floor(frame / COUNT_CELLS);
    if (bin < bins) counts[bin] = counts[bin]! + 1;
  }
  const mean = (at.length * COUNT_CELLS) / frames;
  return counts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / bins / mean;
}
