import { AmplitudeDistributions } from './amplitude-distribution.js';
import { type EventLine, EventLineFinder, LINE_HIGH_HZ, LINE_LOW_HZ } from './event-line.js';
import { MODULATION_BAND_EDGES_HZ, SOUND_FEATURES } from './feature-set.js';
import {
  MODULATION_BIN_HZ,
  MODULATION_BINS,
  ModulationAnalyser,
  type ModulationSpectra,
} from './modulation.js';
import { onsetShape } from './onset-shape.js';
import { OnsetFinder, type Onsets } from './onsets.js';
import { spectralFeatures } from './spectral-features.js';

/** Cells and spectrum of one window, as the feature extractor hands them over. */
export interface WindowInput {
  /** Mean squares of the frames, `WINDOW_FRAMES` of each. */
  full: Float64Array;
  low: Float64Array;
  high: Float64Array;
  /** Mean fourth powers of the frames. */
  fourth: Float64Array;
  /** Power spectrum of the window and its bin width. */
  power: Float64Array;
  binHz: number;
  /** Modulation bins to leave out of the line search, see `background.ts`. */
  masked: Uint8Array | undefined;
}

/** Below this mean square (−120 dB of full scale) a window counts as digital silence. */
const SILENCE = 1e-12;
/** Floor of the amplitude under its logarithm (−200 dB of full scale). */
const LEAST_AMPLITUDE = 1e-10;
/** Weight of the newest window in the running mean. */
export const STEADY_WEIGHT = 0.12;
/** Between the slow lines of drops and the fast ones of shorts, pulses and sprayed drops. */
const FAST_FROM_HZ = 60;

/** Turns one window of sound into the vector that {@link SOUND_FEATURES} describes. */
export class WindowFeatures {
  readonly #rateHz: number;
  readonly #steadyWeight: number;
  readonly #modulation = new ModulationAnalyser();
  readonly #lines = new EventLineFinder();
  readonly #steadyLines = new EventLineFinder();
  readonly #steadyCross = new Float64Array(MODULATION_BINS);
  readonly #distributions = new AmplitudeDistributions();
  readonly #onsets = new OnsetFinder();
  #amplitude = new Float64Array(0);
  #log2Amplitude = new Float64Array(0);
  /** Spectra of the last window, for the background and the report. */
  spectra: ModulationSpectra | undefined;
  line: EventLine | null = null;
  /** Sudden rises of the last window; undefined for silence. */
  onsets: Onsets | undefined;

  constructor(rateHz: number, steadyWeight = STEADY_WEIGHT) {
    this.#rateHz = rateHz;
    this.#steadyWeight = steadyWeight;
  }

  /** Prominence of each modulation bin of the last window. */
  get prominence(): Float64Array {
    return this.#lines.prominence;
  }

  /** @returns the vector; all NaN for digital silence */
  compute(input: WindowInput): Float64Array {
    const values = new Float64Array(SOUND_FEATURES.features.length).fill(NaN);
    this.line = null;
    this.spectra = undefined;
    this.onsets = undefined;
    const squareMean = average(input.full);
    if (!(squareMean > SILENCE)) return values;
    const spectra = this.#modulation.analyse(input.low, input.high);
    this.spectra = spectra;
    this.line = this.#lines.find(spectra.cross, input.masked);
    this.#average(spectra.cross);
    values.set([
      ...bandFluctuation(spectra),
      ...this.#lineFeatures(input.masked),
      ...this.#amplitudeFeatures(input, squareMean),
      ...spectralFeatures(input.power, input.binHz, this.#rateHz),
    ]);
    return values;
  }

  #lineFeatures(masked: Uint8Array | undefined): number[] {
    const line = this.line;
    const steady = this.#steadyLines.find(this.#steadyCross, masked);
    const fast = this.#clearest(FAST_FROM_HZ, LINE_HIGH_HZ, masked);
    const slow = this.#clearest(LINE_LOW_HZ, FAST_FROM_HZ, masked);
    return [
      line ? Math.log2(line.frequencyHz) : NaN,
      line ? Math.log10(line.prominence + 1) : 0,
      line?.sharpness ?? NaN,
      line?.share ?? 0,
      line?.harmonics ?? 0,
      Math.log10(fast.prominence + 1),
      Math.log2(fast.frequencyHz),
      Math.log10(slow.prominence + 1),
      steady ? Math.log2(steady.frequencyHz) : NaN,
      steady ? Math.log10(steady.prominence + 1) : 0,
    ];
  }

  /** A running mean over some two seconds: chance sinks in it, a weak but steady line stays. */
  #average(cross: Float64Array): void {
    const steady = this.#steadyCross;
    for (let k = 0; k < steady.length; k++)
      steady[k] = steady[k]! + this.#steadyWeight * (cross[k]! - steady[k]!);
  }

  #clearest(fromHz: number, toHz: number, masked: Uint8Array | undefined) {
    const prominence = this.#lines.prominence;
    let best = Math.ceil(fromHz / MODULATION_BIN_HZ);
    for (let k = best; k <= toHz / MODULATION_BIN_HZ; k++)
      if (!masked?.[k] && prominence[k]! > prominence[best]!) best = k;
    return { frequencyHz: best * MODULATION_BIN_HZ, prominence: prominence[best]! };
  }

  #amplitudeFeatures(input: WindowInput, squareMean: number): number[] {
    const n = input.full.length;
    if (this.#amplitude.length !== n) {
      this.#amplitude = new Float64Array(n);
      this.#log2Amplitude = new Float64Array(n);
    }
    const amplitude = this.#amplitude;
    const log2Amplitude = this.#log2Amplitude;
    for (let i = 0; i < n; i++) {
      amplitude[i] = Math.sqrt(input.full[i]!);
      log2Amplitude[i] = Math.log2(Math.max(amplitude[i]!, LEAST_AMPLITUDE));
    }
    const shape = this.#distributions.describe(amplitude, log2Amplitude);
    const onsets = this.#onsets.find(log2Amplitude);
    this.onsets = onsets;
    const event = onsetShape(log2Amplitude, onsets.at);
    const kurtosis = average(input.fourth) / squareMean ** 2 - 3;
    const lineRate = this.line?.frequencyHz ?? NaN;
    return [
      Math.log2(Math.max(onsets.rateHz, 0.5)),
      onsets.intervalCv,
      Math.log10(onsets.countDispersion + 0.03),
      onsets.strength,
      Math.log2(Math.max(onsets.strongRateHz, 0.5)),
      onsets.commonRise,
      event.rise,
      event.decaySoon,
      event.decayLate,
      event.gapBefore,
      Math.min(3, Math.abs(Math.log2(lineRate / Math.max(onsets.rateHz, 0.5)))),
      Math.log10(Math.max(kurtosis, -1) + 2),
      Math.log10(shape.coefficientOfVariation + 0.01),
      Math.log10(shape.p95 / shape.p50),
      Math.log10(shape.p50 / shape.p05),
      shape.riseSkew,
    ];
  }
}

function bandFluctuation(spectra: ModulationSpectra): number[] {
  const depth: number[] = [];
  const coherence: number[] = [];
  for (let band = 0; band + 1 < MODULATION_BAND_EDGES_HZ.length; band++) {
    const from = Math.ceil(MODULATION_BAND_EDGES_HZ[band]! / MODULATION_BIN_HZ);
    const to = Math.ceil(MODULATION_BAND_EDGES_HZ[band + 1]! / MODULATION_BIN_HZ);
    let low = 0;
    let high = 0;
    let cross = 0;
    for (let k = from; k < to; k++) {
      low += spectra.low[k]!;
      high += spectra.high[k]!;
      cross += spectra.cross[k]!;
    }
    const both = Math.sqrt(low * high);
    depth.push(Math.log10(both + 1e-9));
    coherence.push(both > 0 ? cross / both : NaN);
  }
  return [...depth, ...coherence];
}

function average(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}
