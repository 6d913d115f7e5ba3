import { concat } from '../../dsp/index.js';
import { LevelHistogram } from './level-histogram.js';

/** A step up of the arc-phase voltage, as the arc lengthens when a drop leaves the wire. */
export interface DropStep {
  /** Slow samples from the start of the arc interval. */
  atSample: number;
  heightV: number;
}

/** Half length of the step filter: long against the noise, short against the time between drops. */
const HALF_S = 0.0016;
/** A step must exceed this multiple of the filter's own noise, and this many volts. */
export const STEP_OVER_NOISE = 3.2;
const LEAST_V = 0.1;

/**
 * Finds steps by the difference of the means after and before, against its own noise on the falling side
 * (drops only step up, so the lower side of the spread is free of them).
 */
export class DropSteps {
  readonly #half: number;
  readonly #spread = new LevelHistogram(-6, 0.02, 600);
  #tail: Float64Array;
  #tailBridged: Uint8Array;
  #position = 0;
  #peak: DropStep | null = null;
  #noiseV = Number.NaN;
  #tilt = Number.NaN;

  constructor(slowRateHz: number) {
    this.#half = Math.max(2, Math.round(HALF_S * slowRateHz));
    this.#tail = new Float64Array(0);
    this.#tailBridged = new Uint8Array(0);
  }

  /** Noise of the step filter in volts. */
  get noiseV(): number {
    return this.#noiseV;
  }

  /** Upper over lower spread of the steps: above 1 for sharp rises with slow falls, 1 for noise; NaN when flat. */
  get tilt(): number {
    return this.#tilt;
  }

  push(slow: Float64Array, bridged: Uint8Array): DropStep[] {
    const values = concat([this.#tail, slow]);
    const holes = joinedBytes(this.#tailBridged, bridged);
    const { differences, clean } = this.#differences(values, holes);
    this.#spread.fade(0.95);
    this.#spread.add(clean);
    this.#measureSpread();
    const first = this.#position - this.#tail.length + this.#half;
    const steps = this.#pick(differences, first);
    const keep = Math.min(values.length, 2 * this.#half - 1);
    this.#tail = values.slice(values.length - keep);
    this.#tailBridged = holes.slice(holes.length - keep);
    this.#position += slow.length;
    return steps;
  }

  /** Step at each place; NaN where a bridged value is under the filter. */
  #differences(values: Float64Array, holes: Uint8Array) {
    const half = this.#half;
    const count = Math.max(0, values.length - 2 * half + 1);
    const differences = new Float64Array(count);
    const clean = new Float64Array(count);
    let kept = 0;
    let sum = 0;
    let bad = 0;
    for (let n = 0; n < 2 * half && n < values.length; n++) {
      sum += n < half ? -values[n]! : values[n]!;
      bad += holes[n]!;
    }
    for (let n = 0; n < count; n++) {
      differences[n] = bad > 0 ? Number.NaN : sum / half;
      if (bad === 0) clean[kept++] = differences[n]!;
      const next = n + 2 * half;
      if (next >= values.length) break;
      sum += values[n]! - 2 * values[n + half]! + values[next]!;
      bad += holes[next]! - holes[n]!;
    }
    return { differences, clean: clean.subarray(0, kept) };
  }

  #measureSpread(): void {
    const middle = this.#spread.quantile(0.5);
    const lower = middle - this.#spread.quantile(0.1);
    const upper = this.#spread.quantile(0.97) - middle;
    const lowest = middle - this.#spread.quantile(0.03);
    this.#noiseV = lower / 1.2816;
    this.#tilt = lowest > 0.005 ? upper / lowest : Number.NaN;
  }

  #pick(differences: Float64Array, first: number): DropStep[] {
    const steps: DropStep[] = [];
    const high = Math.max(LEAST_V, STEP_OVER_NOISE * this.#noiseV);
    for (let n = 0; n < differences.length; n++) {
      const heightV = differences[n]!;
      if (this.#peak && !(heightV > 0.4 * high)) {
        steps.push(this.#peak);
        this.#peak = null;
      }
      if (heightV > high && heightV > (this.#peak?.heightV ?? 0))
        this.#peak = { atSample: first + n, heightV };
    }
    return steps;
  }
}

function joinedBytes(a: Uint8Array, b: Uint8Array): Uint8Array {
  const out = new Uint8Array(a.length + b.length);
  out.set(a);
  out.set(b, a.length);
  return out;
}
