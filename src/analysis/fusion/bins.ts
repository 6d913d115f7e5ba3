/** Frames a second of the series that are aligned: events of an arc are told apart to half a millisecond. */
export const BIN_RATE_HZ = 2000;
/** Longest part of a recording that is kept for alignment, s: 1 MB a series, however long the recording. */
export const MOST_SERIES_S = 120;

/**
 * Means of a stream of values over frames of 1/2000 s, whatever its rate. Frames that no sample of a slow
 * stream falls into lie on the straight line between their neighbours. What comes after
 * {@link MOST_SERIES_S} is left out.
 */
export class FrameMeans {
  readonly #perSample: number;
  #values = new Float32Array(1 << 14);
  #length = 0;
  #samples = 0;
  #bin = 0;
  #sum = 0;
  #count = 0;

  constructor(rateHz: number) {
    this.#perSample = BIN_RATE_HZ / rateHz;
  }

  push(value: number): void {
    const bin = Math.floor(this.#samples++ * this.#perSample);
    if (bin !== this.#bin) {
      this.#close();
      this.#bin = bin;
    }
    this.#sum += value;
    this.#count++;
  }

  /** The frames so far, the last one included. Nothing may be pushed afterwards. */
  finish(): Float32Array {
    this.#close();
    return this.#values.subarray(0, this.#length);
  }

  #close(): void {
    if (this.#count === 0 || this.#bin >= MOST_SERIES_S * BIN_RATE_HZ) return;
    const mean = this.#sum / this.#count;
    const before = this.#values[this.#length - 1] ?? mean;
    const steps = this.#bin + 1 - this.#length;
    for (let i = 1; i <= steps; i++) this.#append(before + ((mean - before) * i) / steps);
    this.#sum = 0;
    this.#count = 0;
  }

  #append(value: number): void {
    if (this.#length === this.#values.length) {
      const larger = new Float32Array(2 * this.#length);
      larger.set(this.#values);
      this.#values = larger;
    }
    this.#values[this.#length++] = value;
  }
}
