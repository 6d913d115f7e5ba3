import { BiquadCascade, butterworth } from '../../../dsp/index.js';
import type { Playback } from './types.js';

const RATE_HZ = 16_000;
const BUDGET_SAMPLES = 480_000;
const FINE_S = 30;

/**
 * Sound to listen to beside the picture: 16 kHz for up to 30 s, 8 kHz for up to a minute; of anything
 * longer the first minute. The loudest sample is brought near full scale.
 */
export class PlaybackBuffer {
  readonly #filter: BiquadCascade;
  readonly #stepSamples: number;
  readonly #rateHz: number;
  readonly #kept: Float32Array;
  #work = new Float64Array(0);
  #count = 0;
  #position = 0;
  #next = 0;

  constructor(inputHz: number) {
    this.#rateHz = Math.min(RATE_HZ, inputHz);
    this.#stepSamples = inputHz / this.#rateHz;
    this.#filter = new BiquadCascade(lowPass(0.45 * this.#rateHz, inputHz));
    this.#kept = new Float32Array(2 * BUDGET_SAMPLES);
  }

  push(samples: Float64Array): void {
    if (this.#count < this.#kept.length) {
      if (this.#work.length < samples.length) this.#work = new Float64Array(samples.length);
      this.#filter.process(samples, this.#work, samples.length);
      while (this.#next < this.#position + samples.length && this.#count < this.#kept.length) {
        this.#kept[this.#count++] = this.#work[Math.floor(this.#next) - this.#position]!;
        this.#next += this.#stepSamples;
      }
    }
    this.#position += samples.length;
  }

  /** Null when nothing was pushed. */
  finish(inputHz: number): Playback | null {
    if (this.#count === 0) return null;
    const durationS = this.#position / inputHz;
    const fine = durationS <= FINE_S || this.#rateHz < 12_000;
    const rateHz = fine ? this.#rateHz : this.#rateHz / 2;
    const sound = fine ? this.#kept.slice(0, this.#count) : this.#halved();
    const kept = sound.subarray(0, BUDGET_SAMPLES);
    const loudest = kept.reduce((top, value) => Math.max(top, Math.abs(value)), 1e-9);
    const samples = Int16Array.from(kept, (value) => Math.round((value / loudest) * 29_000));
    const whole = kept.length / rateHz > durationS - 0.1;
    return { rateHz, startS: 0, whole, samples };
  }

  #halved(): Float32Array {
    const slow = Float64Array.from(this.#kept.subarray(0, this.#count));
    const filter = new BiquadCascade(lowPass(0.225 * this.#rateHz, this.#rateHz));
    filter.process(slow, slow, slow.length);
    return Float32Array.from({ length: slow.length >> 1 }, (_, k) => slow[2 * k]!);
  }
}

function lowPass(cornerHz: number, rateHz: number) {
  return cornerHz < 0.45 * rateHz ? butterworth('low-pass', 8, cornerHz, rateHz) : [];
}
