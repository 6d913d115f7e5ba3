import { MODES } from '../../core/index.js';

const STATES = MODES.length;

export interface ModeFilterOptions {
  /** Time from one window to the next, s. */
  hopS: number;
  /** How much of a window is news to the one before it (hop over window), so that overlap counts once. */
  weight: number;
  /** Mean time a mode lasts, s: how reluctantly the belief changes. */
  meanDwellS: number;
  /** Windows looked ahead before a belief is final. */
  lookAhead: number;
}

/** Final belief about one window. */
export interface Belief {
  startS: number;
  endS: number;
  probabilities: Float64Array;
}

interface Step {
  startS: number;
  endS: number;
  evidence: Float64Array;
  forward: Float64Array;
}

/**
 * Hidden-Markov smoothing with a fixed look-ahead (Rabiner, Proc. IEEE 77 (1989) 257, forward and
 * backward recursions; here the backward one over the look-ahead only). The same windows give the
 * same beliefs whether they come from a file or live.
 */
export class ModeFilter {
  readonly #options: ModeFilterOptions;
  readonly #stay: number;
  readonly #leave: number;
  #steps: Step[] = [];
  /** Belief after the newest window of the arc interval, kept even where every step is taken at once. */
  #shortWindow: Float64Array | undefined;

  constructor(options: ModeFilterOptions) {
    this.#options = options;
    const change = Math.min(0.5, options.hopS / options.meanDwellS);
    this.#stay = 1 - change;
    this.#leave = change / (STATES - 1);
  }

  /** The newest belief, without waiting for the look-ahead. */
  get provisional(): Float64Array | undefined {
    return this.#shortWindow;
  }

  /** Takes a window's probabilities and returns the belief that became final, if one did. */
  push(startS: number, endS: number, probabilities: Float64Array): Belief | undefined {
    const evidence = probabilities.map((p) => Math.max(p, 1e-6) ** this.#options.weight);
    const forward = this.#shortWindow
      ? normalise(this.#step(this.#shortWindow).map((p, k) => p * evidence[k]!))
      : normalise(evidence.slice());
    this.#shortWindow = forward;
    this.#steps.push({ startS, endS, evidence, forward });
    return this.#steps.length > this.#options.lookAhead ? this.#take() : undefined;
  }

  /** Ends the arc interval: the beliefs still waiting, in order. The filter is then as new. */
  flush(): Belief[] {
    const rest: Belief[] = [];
    while (this.#steps.length > 0) rest.push(this.#take());
    this.#shortWindow = undefined;
    return rest;
  }

  #take(): Belief {
    let backward = new Float64Array(STATES).fill(1);
    for (let i = this.#steps.length - 1; i > 0; i--) {
      const step = this.#steps[i]!;
      backward = normalise(this.#step(backward.map((b, k) => b * step.evidence[k]!)));
    }
    const first = this.#steps.shift()!;
    return {
      startS: first.startS,
      endS: first.endS,
      probabilities: normalise(first.forward.map((p, k) => p * backward[k]!)),
    };
  }

  /** One application of the (symmetric) transition matrix. */
  #step(values: Float64Array): Float64Array {
    const sum = values.reduce((total, value) => total + value, 0);
    return values.map((value) => this.#stay * value + this.#leave * (sum - value));
  }
}

function normalise(values: Float64Array): Float64Array<ArrayBuffer> {
  const sum = values.reduce((total, value) => total + value, 0);
  return Float64Array.from(values, (value) => value / sum);
}
