import { hannWindow, RealFft, windowEnergy } from '../../dsp/index.js';
import { FRAME_RATE_HZ, WINDOW_FRAMES } from './grid.js';

/** Bin width of the modulation spectra: 0.977 Hz. */
export const MODULATION_BIN_HZ = FRAME_RATE_HZ / WINDOW_FRAMES;
export const MODULATION_BINS = WINDOW_FRAMES / 2 + 1;

/**
 * Modulation of the two half-bands over one window, bins 0 to 2 kHz, as shares of the squared mean.
 * Random hiss moves the two halves independently, an arc's events move both: `cross` keeps the common
 * part (real part of the cross-spectrum) and averages the rest away.
 */
export interface ModulationSpectra {
  low: Float64Array;
  high: Float64Array;
  cross: Float64Array;
}

/** Computes {@link ModulationSpectra}; its arrays are reused by the next call. */
export class ModulationAnalyser {
  readonly #fft = new RealFft(WINDOW_FRAMES);
  readonly #window = hannWindow(WINDOW_FRAMES);
  // One-sided power: a sine of amplitude a shows a²/2 summed over its bins.
  readonly #scale = 2 / (WINDOW_FRAMES * windowEnergy(this.#window));
  readonly #root = new Float64Array(WINDOW_FRAMES);
  readonly #re = new Float64Array(MODULATION_BINS);
  readonly #im = new Float64Array(MODULATION_BINS);
  readonly #spectra: ModulationSpectra = {
    low: new Float64Array(MODULATION_BINS),
    high: new Float64Array(MODULATION_BINS),
    cross: new Float64Array(MODULATION_BINS),
  };

  /**
   * @param lowPower frame energies of the lower half-band, {@link WINDOW_FRAMES} of them
   * @param highPower the same of the upper half-band
   */
  analyse(lowPower: Float64Array, highPower: Float64Array): ModulationSpectra {
    const { low, high, cross } = this.#spectra;
    this.#transform(lowPower);
    const scale = this.#scale;
    const spectrum = this.#fft.spectrum;
    for (let k = 0; k < MODULATION_BINS; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      this.#re[k] = re;
      this.#im[k] = im;
      low[k] = (re * re + im * im) * scale;
    }
    this.#transform(highPower);
    for (let k = 0; k < MODULATION_BINS; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      high[k] = (re * re + im * im) * scale;
      cross[k] = (re * this.#re[k]! + im * this.#im[k]!) * scale;
    }
    return this.#spectra;
  }

  /** Fourth root of energy (square root of amplitude) tames single loud cracks; over its mean, minus 1. */
  #transform(power: Float64Array): void {
    const root = this.#root;
    let sum = 0;
    for (let i = 0; i < WINDOW_FRAMES; i++) {
      root[i] = Math.sqrt(Math.sqrt(power[i]!));
      sum += root[i]!;
    }
    const inverse = sum > 0 ? WINDOW_FRAMES / sum : 0;
    for (let i = 0; i < WINDOW_FRAMES; i++) root[i] = root[i]! * inverse;
    this.#fft.transform(root, 0, this.#window, sum > 0 ? 1 : 0);
  }
}
