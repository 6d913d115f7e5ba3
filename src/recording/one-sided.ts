/** Mean in parts of full scale, and its part of the power, above which a channel is no sound. Own choice. */
const LARGE_OFFSET = 0.02;
const OFFSET_POWER = 0.25;

/** Whether the samples of a channel lie on one side of zero, as volts and amperes do and sound cannot. */
export class Sides {
  #count = 0;
  #sum = 0;
  #squares = 0;

  add(samples: Float64Array): void {
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < samples.length; i++) {
      const value = samples[i]!;
      sum += value;
      squares += value * value;
    }
    this.#sum += sum;
    this.#squares += squares;
    this.#count += samples.length;
  }

  /** A mean that is large, and most of the power: far above the offset of any sound input. */
  get oneSided(): boolean {
    const mean = this.#sum / this.#count;
    return (
      Math.abs(mean) > LARGE_OFFSET && mean * mean > OFFSET_POWER * (this.#squares / this.#count)
    );
  }
}
