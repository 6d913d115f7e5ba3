/**
 * Vectors at equal steps of time for a run of unknown length: when there are too many, neighbours become
 * their mean and the step doubles. NaN is passed over in a mean.
 */
export class VectorSeries {
  readonly #width: number;
  readonly #most: number;
  #rows: Float64Array[] = [];
  #step: number;
  #open: { sum: Float64Array; counts: Float64Array } | undefined;
  #inOpen = 0;
  #perRow = 1;

  constructor(width: number, options: { stepS: number; most: number }) {
    this.#width = width;
    this.#step = options.stepS;
    this.#most = options.most;
  }

  get stepS(): number {
    return this.#step;
  }

  push(vector: ArrayLike<number>): void {
    this.#open ??= { sum: new Float64Array(this.#width), counts: new Float64Array(this.#width) };
    for (let k = 0; k < this.#width; k++) {
      if (Number.isNaN(vector[k])) continue;
      this.#open.sum[k] = this.#open.sum[k]! + vector[k]!;
      this.#open.counts[k] = this.#open.counts[k]! + 1;
    }
    if (++this.#inOpen === this.#perRow) this.#close();
  }

  /** One array for each place of the vector. */
  columns(): Float64Array[] {
    if (this.#inOpen > 0) this.#close();
    return Array.from({ length: this.#width }, (_, k) =>
      Float64Array.from(this.#rows, (row) => row[k]!),
    );
  }

  #close(): void {
    const { sum, counts } = this.#open!;
    this.#rows.push(sum.map((value, k) => value / counts[k]!));
    this.#open = undefined;
    this.#inOpen = 0;
    if (this.#rows.length < this.#most) return;
    const joined: Float64Array[] = [];
    for (let k = 0; k + 1 < this.#rows.length; k += 2)
      joined.push(this.#rows[k]!.map((value, n) => meanOf(value, this.#rows[k + 1]![n]!)));
    this.#rows = joined;
    this.#perRow *= 2;
    this.#step *= 2;
  }
}

function meanOf(a: number, b: number): number {
  if (Number.isNaN(a)) return b;
  return Number.isNaN(b) ? a : (a + b) / 2;
}
