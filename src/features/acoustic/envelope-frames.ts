import { BiquadCascade, butterworth } from '../../dsp/index.js';
import {
  BAND_HIGH_HZ,
  BAND_LOW_HZ,
  bandTopHz,
  FRAME_RATE_HZ,
  HIGH_BAND_BOTTOM_HZ,
  LOW_BAND_TOP_HZ,
} from './grid.js';

/** Energy of one envelope frame (0.25 ms) in the analysis band and in its two halves. */
export interface EnvelopeFrame {
  /** Mean square of the whole band. */
  full: number;
  /** Mean fourth power of the whole band, for the kurtosis. */
  fourth: number;
  /** Mean square of the lower half-band. */
  low: number;
  /** Mean square of the upper half-band. */
  high: number;
  /** Largest magnitude of the unfiltered samples. */
  peak: number;
}

/**
 * Filters sound into the analysis band (1.5 to 12 kHz, or 0.45 of the rate) and its halves, and sums
 * energy over frames of 0.25 ms. A frame ends at the sample nearest to a multiple of 0.25 ms, so that
 * every sample rate gives exactly 4,000 frames a second.
 */
export class EnvelopeFrames {
  readonly #rateHz: number;
  readonly #whole: BiquadCascade;
  readonly #low: BiquadCascade;
  readonly #high: BiquadCascade;
  #band = new Float64Array(0);
  #lowBand = new Float64Array(0);
  #highBand = new Float64Array(0);
  #samples = 0;
  #frames = 0;
  #count = 0;
  #frame: EnvelopeFrame = emptyCell();

  constructor(rateHz: number) {
    this.#rateHz = rateHz;
    const top = bandTopHz(rateHz);
    const highPass = butterworth('high-pass', 4, BAND_LOW_HZ, rateHz);
    // Where the rate itself ends the band there is nothing left to cut.
    const lowPass = top < BAND_HIGH_HZ ? [] : butterworth('low-pass', 2, top, rateHz);
    this.#whole = new BiquadCascade([...highPass, ...lowPass]);
    this.#low = new BiquadCascade(butterworth('low-pass', 4, LOW_BAND_TOP_HZ, rateHz));
    this.#high = new BiquadCascade(butterworth('high-pass', 4, HIGH_BAND_BOTTOM_HZ, rateHz));
  }

  /** Calls `onFrame` for each frame completed by these samples; the frame object is reused. */
  push(samples: Float64Array, onFrame: (frame: EnvelopeFrame) => void): void {
    this.#reserve(samples.length);
    this.#whole.process(samples, this.#band, samples.length);
    this.#low.process(this.#band, this.#lowBand, samples.length);
    this.#high.process(this.#band, this.#highBand, samples.length);
    let start = 0;
    while (start < samples.length) {
      const frameEnd = Math.round(((this.#frames + 1) * this.#rateHz) / FRAME_RATE_HZ);
      const end = Math.min(samples.length, start + frameEnd - this.#samples);
      this.#sum(samples, start, end);
      this.#samples += end - start;
      start = end;
      if (this.#samples === frameEnd) this.#finish(onFrame);
    }
  }

  #sum(samples: Float64Array, start: number, end: number): void {
    const band = this.#band;
    const lowBand = this.#lowBand;
    const highBand = this.#highBand;
    const frame = this.#frame;
    // Going on from the frame's own sums keeps the order of additions, whatever the split into pushes.
    let { full, fourth, low, high, peak } = frame;
    for (let i = start; i < end; i++) {
      const square = band[i]! * band[i]!;
      full += square;
      fourth += square * square;
      low += lowBand[i]! * lowBand[i]!;
      high += highBand[i]! * highBand[i]!;
      const magnitude = Math.abs(samples[i]!);
      if (magnitude > peak) peak = magnitude;
    }
    frame.full = full;
    frame.fourth = fourth;
    frame.low = low;
    frame.high = high;
    frame.peak = peak;
    this.#count += end - start;
  }

  #finish(onFrame: (frame: EnvelopeFrame) => void): void {
    this.#frames++;
    const frame = this.#frame;
    // Below 4 kHz a frame can hold no sample; it then repeats silence.
    const scale = this.#count > 0 ? 1 / this.#count : 0;
    frame.full *= scale;
    frame.fourth *= scale;
    frame.low *= scale;
    frame.high *= scale;
    onFrame(frame);
    frame.full = frame.fourth = frame.low = frame.high = frame.peak = 0;
    this.#count = 0;
  }

  #reserve(length: number): void {
    if (this.#band.length >= length) return;
    this.#band = new Float64Array(length);
    this.#lowBand = new Float64Array(length);
    this.#highBand = new Float64Array(length);
  }
}

function emptyCell(): EnvelopeFrame {
  return { full: 0, fourth: 0, low: 0, high: 0, peak: 0 };
}
