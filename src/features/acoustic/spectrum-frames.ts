import { hannWindow, RealFft } from '../../dsp/index.js';

const HOPS_A_WINDOW = 4;

/**
 * Power spectrum over the last hops, from frames of about 46 ms side by side. Without overlap a Hann window
 * passes by part of the sound, which an average can spare.
 */
export class SpectrumFrames {
  readonly binHz: number;
  readonly #fft: RealFft;
  readonly #window: Float64Array;
  readonly #frame: Float64Array;
  #filled = 0;
  readonly #hops: Float64Array[];
  readonly #average: Float64Array;

  constructor(rateHz: number) {
    const size = 2 ** Math.round(Math.log2(rateHz * 0.0464));
    this.binHz = rateHz / size;
    this.#fft = new RealFft(size);
    this.#window = hannWindow(size);
    this.#frame = new Float64Array(size);
    this.#hops = Array.from({ length: HOPS_A_WINDOW }, () => new Float64Array(size / 2 + 1));
    this.#average = new Float64Array(size / 2 + 1);
  }

  push(samples: Float64Array): void {
    const frame = this.#frame;
    let taken = 0;
    while (taken < samples.length) {
      const count = Math.min(frame.length - this.#filled, samples.length - taken);
      frame.set(samples.subarray(taken, taken + count), this.#filled);
      this.#filled += count;
      taken += count;
      if (this.#filled < frame.length) return;
      this.#fft.transform(frame, 0, this.#window);
      this.#fft.addPower(this.#hops[HOPS_A_WINDOW - 1]!);
      this.#filled = 0;
    }
  }

  /** Sum over the last hops, all four unless told; the newest counts as far as it has come. */
  average(hops = HOPS_A_WINDOW): Float64Array {
    const average = this.#average.fill(0);
    for (const hop of this.#hops.slice(HOPS_A_WINDOW - hops))
      for (let k = 0; k < average.length; k++) average[k] = average[k]! + hop[k]!;
    return average;
  }

  /** Begins a hop; the oldest is forgotten. */
  nextHop(): void {
    const oldest = this.#hops.shift()!;
    this.#hops.push(oldest.fill(0));
  }
}
