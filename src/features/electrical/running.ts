/** Count, mean and spread of numbers that come one at a time (Welford's recurrence). */
export class Running {
  count = 0;
  mean = Number.NaN;
  #squares = 0;

  add(value: number): void {
    if (Number.isNaN(value)) return;
    if (this.count === 0) this.mean = 0;
    this.count++;
    const off = value - this.mean;
    this.mean += off / this.count;
    this.#squares += off * (value - this.mean);
  }

  /** Population standard deviation; NaN before the first value. */
  get sd(): number {
    return this.count > 0 ? Math.sqrt(this.#squares / this.count) : Number.NaN;
  }

  /** Spread over mean; NaN with fewer than three values. */
  get cv(): number {
    return this.count > 2 ? this.sd / this.mean : Number.NaN;
  }
}

/** Median of whole numbers of samples, from counts; longer ones share the last bin. */
export class SampleCounts {
  readonly #counts = new Float64Array(1 << 15);
  readonly #width: number;
  total = 0;

  /** `most`: the largest count that must still be told apart. */
  constructor(most: number) {
    this.#width = Math.max(1, Math.ceil(most / this.#counts.length));
  }

  add(samples: number): void {
    const bin = Math.min(this.#counts.length - 1, Math.floor(samples / this.#width));
    this.#counts[bin] = this.#counts[bin]! + 1;
    this.total++;
  }

  median(): number {
    if (this.total === 0) return Number.NaN;
    // Mean of the two middle values for an even number, as any text defines it.
    const at = (rank: number) => {
      let seen = 0;
      for (let k = 0; k < this.#counts.length; k++) {
        seen += this.#counts[k]!;
        if (seen > rank) return k * this.#width;
      }
      return Number.NaN;
    };
    return (at(Math.floor((this.total - 1) / 2)) + at(Math.floor(this.total / 2))) / 2;
  }
}

/** Sum, mean and spread of whole blocks of samples around a shift, so that large means cost no digits. */
export class BlockSums {
  count = 0;
  #shift = Number.NaN;
  #sum = 0;
  #squares = 0;

  add(values: Float64Array, from = 0, to = values.length): void {
    if (to <= from) return;
    if (Number.isNaN(this.#shift)) this.#shift = values[from]!;
    const shift = this.#shift;
    let sum = 0;
    let squares = 0;
    for (let n = from; n < to; n++) {
      const off = values[n]! - shift;
      sum += off;
      squares += off * off;
    }
    this.#sum += sum;
    this.#squares += squares;
    this.count += to - from;
  }

  get mean(): number {
    return this.#shift + this.#sum / this.count;
  }

  get sd(): number {
    const off = this.#sum / this.count;
    return Math.sqrt(Math.max(0, this.#squares / this.count - off * off));
  }
}
