import { MODES } from '../core/index.js';

/**
 * Mean over the windows of a run of what the scorer of windows says: its scores, and what each feature
 * added to them. Memory does not grow with the run.
 */
export class WindowOpinions {
  #windows = 0;
  readonly #scores = new Float64Array(MODES.length);
  readonly #parts: Float64Array[];

  constructor(features: number) {
    this.#parts = MODES.map(() => new Float64Array(features));
  }

  /** `scores` in the order of {@link MODES}; `parts` by mode and feature, absent where nobody asks why. */
  add(scores: Float64Array, parts?: readonly Float64Array[]): void {
    this.#windows++;
    addTo(this.#scores, scores);
    for (const [k, part] of (parts ?? []).entries()) addTo(this.#parts[k]!, part);
  }

  /** Joins the windows of another arc interval of the same run. */
  merge(other: WindowOpinions): void {
    this.#windows += other.#windows;
    addTo(this.#scores, other.#scores);
    for (const [k, part] of other.#parts.entries()) addTo(this.#parts[k]!, part);
  }

  /** Mean scores; zeros, which are no opinion, before the first window. */
  scores(): Float64Array {
    return this.#mean(this.#scores);
  }

  /** Mean of what each feature added to the score of mode `k`. */
  parts(k: number): Float64Array {
    return this.#mean(this.#parts[k]!);
  }

  #mean(sums: Float64Array): Float64Array {
    return sums.map((sum) => sum / Math.max(1, this.#windows));
  }
}

function addTo(sums: Float64Array, values: Float64Array): void {
  for (let i = 0; i < sums.length; i++) sums[i] = sums[i]! + values[i]!;
}
