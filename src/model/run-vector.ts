/** Length of the vector of a run for a number of window features. */
export function runVectorLength(features: number): number {
  return 2 * features;
}

/** Sums from which the vector of a run is made; memory does not grow with the run. */
export class RunVector {
  readonly #count: Float64Array;
  readonly #sum: Float64Array;
  readonly #squares: Float64Array;

  constructor(features: number) {
    this.#count = new Float64Array(features);
    this.#sum = new Float64Array(features);
    this.#squares = new Float64Array(features);
  }

  add(values: Float64Array): void {
    for (let i = 0; i < values.length; i++) {
      const value = values[i]!;
      if (Number.isNaN(value)) continue;
      this.#count[i] = this.#count[i]! + 1;
      this.#sum[i] = this.#sum[i]! + value;
      this.#squares[i] = this.#squares[i]! + value * value;
    }
  }

  /** Joins the windows of another arc interval of the same run. */
  merge(other: RunVector): void {
    for (let i = 0; i < this.#sum.length; i++) {
      this.#count[i] = this.#count[i]! + other.#count[i]!;
      this.#sum[i] = this.#sum[i]! + other.#sum[i]!;
      this.#squares[i] = this.#squares[i]! + other.#squares[i]!;
    }
  }

  /** Mean of a feature over the windows that show it; NaN where none does. */
  mean(i: number): number {
    return this.#sum[i]! / this.#count[i]!;
  }

  /**
   * Means of all features, then their standard deviations. A run averages away the chance of its
   * windows, so that weak but steady signs count. NaN where no window (for a spread: fewer than two)
   * shows the feature.
   */
  values(): Float64Array {
    const n = this.#sum.length;
    const vector = new Float64Array(runVectorLength(n));
    for (let i = 0; i < n; i++) {
      const count = this.#count[i]!;
      const mean = this.#sum[i]! / count;
      vector[i] = mean;
      vector[n + i] =
        count > 1 ? Math.sqrt(Math.max(0, this.#squares[i]! / count - mean * mean)) : NaN;
    }
    return vector;
  }
}
