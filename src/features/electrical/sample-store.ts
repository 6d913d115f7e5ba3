/** A sliding stretch of samples with absolute numbering: append at the end, forget from the front. */
export class SampleStore {
  #buffer: Float64Array;
  #start = 0;
  #end = 0;
  /** Number of the sample at `#start`. */
  #first = 0;

  constructor(capacity: number) {
    this.#buffer = new Float64Array(capacity);
  }

  /** Room for `length` more samples; answers the array and where to write. */
  reserve(length: number): { target: Float64Array; at: number } {
    if (this.#end + length > this.#buffer.length) {
      const kept = this.#end - this.#start;
      if (kept + length > this.#buffer.length) {
        const grown = new Float64Array(2 * (kept + length));
        grown.set(this.#buffer.subarray(this.#start, this.#end));
        this.#buffer = grown;
      } else this.#buffer.copyWithin(0, this.#start, this.#end);
      this.#start = 0;
      this.#end = kept;
    }
    const at = this.#end;
    this.#end += length;
    return { target: this.#buffer, at };
  }

  /** Samples `from` up to `to` by their numbers, valid until the next `reserve`. */
  view(from: number, to: number): Float64Array {
    const offset = this.#start - this.#first;
    return this.#buffer.subarray(from + offset, to + offset);
  }

  /** Mean of samples `from` up to `to`. */
  mean(from: number, to: number): number {
    const buffer = this.#buffer;
    const offset = this.#start - this.#first;
    let sum = 0;
    for (let n = from + offset; n < to + offset; n++) sum += buffer[n]!;
    return sum / (to - from);
  }

  /**
   * Half the mean square of the difference of neighbours, from the step into sample `from` on: the power
   * of white noise, deaf to slow motion. 0 for a single sample without a neighbour.
   */
  whitePower(from: number, to: number): number {
    const buffer = this.#buffer;
    const offset = this.#start - this.#first;
    const first = Math.max(this.#start + 1, from + offset);
    let sum = 0;
    for (let n = first; n < to + offset; n++) {
      const step = buffer[n]! - buffer[n - 1]!;
      sum += step * step;
    }
    const steps = to + offset - first;
    return steps > 0 ? sum / (2 * steps) : 0;
  }

  /** Forgets everything before sample `from`. */
  forget(from: number): void {
    const drop = from - this.#first;
    if (drop <= 0) return;
    this.#start += drop;
    this.#first = from;
  }
}
