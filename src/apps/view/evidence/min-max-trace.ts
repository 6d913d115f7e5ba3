/**
 * Keeps the smallest and largest value of each bin of a trace of unknown length in bounded memory: when
 * the bins are used up, neighbours are joined and bins become twice as long. NaN samples are passed over;
 * a bin of NaN alone is NaN.
 */
export class MinMaxTrace {
  readonly #capacity: number;
  readonly #min: Float64Array;
  readonly #max: Float64Array;
  #binSamples = 1;
  #bins = 0;
  #inBin = 0;
  #low = Number.NaN;
  #high = Number.NaN;

  /** @param capacity most bins kept, even */
  constructor(capacity: number) {
    this.#capacity = capacity;
    this.#min = new Float64Array(capacity);
    this.#max = new Float64Array(capacity);
  }

  get binSamples(): number {
    return this.#binSamples;
  }

  push(samples: Float64Array): void {
    for (let i = 0; i < samples.length; i++) {
      const value = samples[i]!;
      if (!(value >= this.#low)) this.#low = Number.isNaN(value) ? this.#low : value;
      if (!(value <= this.#high)) this.#high = Number.isNaN(value) ? this.#high : value;
      if (++this.#inBin === this.#binSamples) this.#close();
    }
  }

  /** The bins so far, the last perhaps of fewer samples. */
  bins(): { min: Float64Array; max: Float64Array } {
    const more = this.#inBin > 0 ? 1 : 0;
    const min = this.#min.slice(0, this.#bins + more);
    const max = this.#max.slice(0, this.#bins + more);
    if (more > 0) {
      min[this.#bins] = this.#low;
      max[this.#bins] = this.#high;
    }
    return { min, max };
  }

  #close(): void {
    this.#min[this.#bins] = this.#low;
    this.#max[this.#bins] = this.#high;
    this.#bins++;
    this.#inBin = 0;
    this.#low = Number.NaN;
    this.#high = Number.NaN;
    if (this.#bins === this.#capacity) this.#halve();
  }

  #halve(): void {
    for (let k = 0; k < this.#bins / 2; k++) {
      this.#min[k] = lesser(this.#min[2 * k]!, this.#min[2 * k + 1]!);
      this.#max[k] = -lesser(-this.#max[2 * k]!, -this.#max[2 * k + 1]!);
    }
    this.#bins /= 2;
    this.#binSamples *= 2;
  }
}

function lesser(a: number, b: number): number {
  if (Number.isNaN(a)) return b;
  return Number.isNaN(b) ? a : Math.min(a, b);
}
