import { hannWindow, RealFft, windowEnergy } from '../../dsp/index.js';

/** Power spectrum of one segment: V² (or A²) a bin, bins 0 to size/2; they add up to the variance. */
export interface SegmentSpectrum {
  /** One past its last slow sample. */
  endSample: number;
  power: Float64Array;
}

/** Cuts a slow trace into half-overlapping Hann segments of about 0.2 s and gives the power of each. */
export class SegmentSpectra {
  readonly size: number;
  readonly binHz: number;
  readonly #fft: RealFft;
  readonly #window: Float64Array;
  readonly #scale: number;
  readonly #frame: Float64Array;
  #filled = 0;
  #position = 0;

  constructor(slowRateHz: number) {
    this.size = Math.max(32, 2 ** Math.round(Math.log2(0.2 * slowRateHz)));
    this.binHz = slowRateHz / this.size;
    this.#fft = new RealFft(this.size);
    this.#window = hannWindow(this.size);
    this.#scale = 2 / (this.size * windowEnergy(this.#window));
    this.#frame = new Float64Array(this.size);
  }

  /** Spectra of the segments that became complete. */
  push(slow: Float64Array): SegmentSpectrum[] {
    const out: SegmentSpectrum[] = [];
    let n = 0;
    while (n < slow.length) {
      const take = Math.min(slow.length - n, this.size - this.#filled);
      this.#frame.set(slow.subarray(n, n + take), this.#filled);
      this.#filled += take;
      n += take;
      if (this.#filled < this.size) break;
      out.push({ endSample: this.#position + n, power: this.#power() });
      this.#frame.copyWithin(0, this.size / 2);
      this.#filled = this.size / 2;
    }
    this.#position += slow.length;
    return out;
  }

  #power(): Float64Array {
    let sum = 0;
    for (const value of this.#frame) sum += value;
    this.#fft.transform(this.#frame, 0, this.#window, sum / this.size);
    const power = new Float64Array(this.size / 2 + 1);
    this.#fft.addPower(power);
    for (let k = 0; k < power.length; k++) power[k] = power[k]! * this.#scale;
    power[0] = power[0]! / 2;
    power[this.size / 2] = power[this.size / 2]! / 2;
    return power;
  }
}

/** Sum of the power between two frequencies, counted by bin centres. */
export function bandPower(
  power: Float64Array,
  binHz: number,
  fromHz: number,
  toHz: number,
): number {
  const last = Math.min(power.length - 1, Math.floor(toHz / binHz));
  let sum = 0;
  for (let k = Math.max(0, Math.ceil(fromHz / binHz)); k <= last; k++) sum += power[k]!;
  return sum;
}
