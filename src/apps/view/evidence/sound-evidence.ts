import {
  EnvelopeFrames,
  FRAME_RATE_HZ,
  MODULATION_BIN_HZ,
  ModulationAnalyser,
  OnsetFinder,
  WINDOW_FRAMES,
} from '../../../features/index.js';
import { addInterval, INTERVAL_BINS, intervalCounts } from './interval-bins.js';
import { TimedSums } from './timed-sums.js';
import type { FluctuationSpectrum, IntervalCounts } from './types.js';

const SPECTRUM_BINS = Math.round(1000 / MODULATION_BIN_HZ) + 1;
const WINDOW_S = WINDOW_FRAMES / FRAME_RATE_HZ;

/** Fluctuation spectrum and intervals between cracks of a sound, window after window. */
export class SoundEvidence {
  readonly #cells: EnvelopeFrames;
  readonly #analyser = new ModulationAnalyser();
  readonly #onsets = new OnsetFinder();
  readonly #full = new Float64Array(WINDOW_FRAMES);
  readonly #low = new Float64Array(WINDOW_FRAMES);
  readonly #high = new Float64Array(WINDOW_FRAMES);
  readonly #spectra = new TimedSums(SPECTRUM_BINS + 1, { slotS: WINDOW_S, most: 64 });
  readonly #intervals = new TimedSums(INTERVAL_BINS, { slotS: WINDOW_S, most: 256 });
  #filled = 0;
  #windows = 0;

  constructor(rateHz: number) {
    this.#cells = new EnvelopeFrames(rateHz);
  }

  push(samples: Float64Array): void {
    this.#cells.push(samples, (cell) => {
      this.#full[this.#filled] = cell.full;
      this.#low[this.#filled] = cell.low;
      this.#high[this.#filled] = cell.high;
      if (++this.#filled === WINDOW_FRAMES) this.#window();
    });
  }

  spectrum(arcIntervals: readonly { startS: number; endS: number }[]): FluctuationSpectrum | null {
    const sum = this.#spectra.within(arcIntervals);
    const windows = sum[SPECTRUM_BINS]!;
    if (windows === 0) return null;
    const power = sum.slice(0, SPECTRUM_BINS).map((value) => Math.max(0, value / windows));
    return { of: 'sound', unit: 'share of the mean', binHz: MODULATION_BIN_HZ, power };
  }

  intervals(arcIntervals: readonly { startS: number; endS: number }[]): IntervalCounts | null {
    return intervalCounts('sudden rises of the sound', this.#intervals.within(arcIntervals));
  }

  #window(): void {
    this.#filled = 0;
    // A little inside the window, so that rounding cannot move it to the next slot.
    const timeS = (this.#windows++ + 0.5) * WINDOW_S;
    const { cross } = this.#analyser.analyse(this.#low, this.#high);
    const sum = this.#spectra.at(timeS);
    for (let k = 0; k < SPECTRUM_BINS; k++) sum[k] = sum[k]! + cross[k]!;
    sum[SPECTRUM_BINS] = sum[SPECTRUM_BINS]! + 1;
    const cracks = this.#onsets.find(
      this.#full.map((square) => 0.5 * Math.log2(Math.max(square, 1e-20))),
    ).at;
    const counts = this.#intervals.at(timeS);
    for (let k = 1; k < cracks.length; k++)
      addInterval(counts, (cracks[k]! - cracks[k - 1]!) / FRAME_RATE_HZ);
  }
}
