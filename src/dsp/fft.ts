import FFT from 'fft.js';

/**
 * Power spectra of real frames of one power-of-two size. All arrays handed to fft.js are plain arrays of
 * one kind, since mixing kinds makes its inner loops markedly slower.
 */
export class RealFft {
  readonly size: number;
  /** Real and imaginary parts interleaved, bins 0 to size/2; overwritten by each transform. */
  readonly spectrum: number[];
  readonly #fft: FFT;
  readonly #frame: number[];

  /** @throws RangeError when `size` is not a power of two above 1. */
  constructor(size: number) {
    if (!Number.isInteger(Math.log2(size)) || size < 2)
      throw new RangeError(`FFT size must be a power of two above 1, got ${size}`);
    this.size = size;
    this.#fft = new FFT(size);
    this.#frame = new Array<number>(size).fill(0);
    this.spectrum = this.#fft.createComplexArray();
  }

  /** Transforms `samples[offset … offset+size)` times `window`, after taking `subtract` from each sample. */
  transform(samples: Float64Array, offset: number, window: Float64Array, subtract = 0): number[] {
    const frame = this.#frame;
    for (let i = 0; i < this.size; i++) frame[i] = (samples[offset + i]! - subtract) * window[i]!;
    this.#fft.realTransform(this.spectrum, frame);
    return this.spectrum;
  }

  /** Adds the squared magnitudes of the last transform, bins 0 to size/2, to `sum`. */
  addPower(sum: Float64Array): void {
    const spectrum = this.spectrum;
    for (let k = 0; k <= this.size / 2; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      sum[k] = sum[k]! + re * re + im * im;
    }
  }
}
