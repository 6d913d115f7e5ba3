/** A rail is met when this many samples in a row stand at the same extreme value. */
const RUN = 3;
/** Below this share of full scale equal neighbours are quantisation, not clipping. */
const LEAST_PEAK = 0.05;

/**
 * Counts samples held at a rail: three or more equal samples in a row at (or within 0.1 % of) the
 * largest magnitude met so far. Rails below full scale, as after gain control, count too.
 */
export class ClipCounter {
  #largest = 0;
  #last = Number.NaN;
  #run = 0;
  #clipped = 0;
  #samples = 0;

  push(samples: Float64Array): void {
    for (let i = 0; i < samples.length; i++) {
      const value = samples[i]!;
      const magnitude = value < 0 ? -value : value;
      if (magnitude > this.#largest) this.#largest = magnitude;
      if (value === this.#last && magnitude >= 0.999 * this.#largest && magnitude > LEAST_PEAK) {
        this.#run++;
        if (this.#run === RUN) this.#clipped += RUN;
        else if (this.#run > RUN) this.#clipped++;
      } else this.#run = 1;
      this.#last = value;
    }
    this.#samples += samples.length;
  }

  /** Share of clipped samples since the last call; 0 for no samples. */
  take(): number {
    const share = this.#samples > 0 ? this.#clipped / this.#samples : 0;
    this.#clipped = 0;
    this.#samples = 0;
    return share;
  }
}
