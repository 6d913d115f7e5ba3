import type { QualityFlag } from '../../core/index.js';
import { flag } from '../../messages/index.js';

/** Below this rate a 1 ms short has fewer than five samples (R. D. Smith's regular run has shorts of about 1 ms). */
export const FULL_RATE_HZ = 5000;
/** Shares above which a doubt is worth saying. */
const CLIPPED_SHARE = 0.001;
const HELD_SHARE = 0.02;
/** A value repeated for this long is a held or frozen reading: real sensors waver. */
const HELD_S = 0.005;

/** Watches one channel for samples that are missing, frozen or at the rail, and repairs the missing ones. */
export class ChannelQuality {
  readonly #name: 'voltage' | 'current';
  readonly #heldSamples: number;
  #count = 0;
  #missing = 0;
  #held = 0;
  #quantum = Number.POSITIVE_INFINITY;
  #last = 0;
  #lowest = Number.POSITIVE_INFINITY;
  #highest = Number.NEGATIVE_INFINITY;
  #atLowest = 0;
  #atHighest = 0;

  constructor(name: 'voltage' | 'current', sampleRateHz: number) {
    this.#name = name;
    this.#heldSamples = Math.max(8, Math.round(HELD_S * sampleRateHz));
  }

  /** Copies `length` samples to `target`; one that is not a finite number becomes the last good one. */
  copy(source: Float64Array, from: number, target: Float64Array, to: number, length: number): void {
    let last = this.#last;
    let missing = 0;
    for (let n = 0; n < length; n++) {
      const value = source[from + n]!;
      // The difference of a number with itself is 0 only for finite numbers.
      if (value - value === 0) last = value;
      else missing++;
      target[to + n] = last;
    }
    this.#last = last;
    this.#missing += missing;
    this.#count += length;
  }

  /** Watches repaired samples while an arc burns. */
  watch(values: Float64Array): void {
    let previous = Number.NaN;
    let run = 0;
    let entry = 0;
    for (let n = 0; n < values.length; n++) {
      const value = values[n]!;
      if (value === previous) {
        run++;
        continue;
      }
      const step = Math.abs(value - previous);
      if (step < this.#quantum) this.#quantum = step;
      if (run >= 3) this.#endRun(previous, run, Math.min(entry, step));
      entry = step;
      run = 1;
      previous = value;
    }
  }

  /**
   * A run of one value entered and left by leaps of several steps of the converter: a coarse converter
   * that dwells on a value goes step by step, a rail or a frozen reading does not.
   */
  #endRun(value: number, run: number, leap: number): void {
    if (!(leap > 2.5 * this.#quantum)) return;
    if (run >= this.#heldSamples) this.#held += run;
    if (value > this.#highest) {
      this.#highest = value;
      this.#atHighest = 0;
    }
    if (value < this.#lowest) {
      this.#lowest = value;
      this.#atLowest = 0;
    }
    if (value === this.#highest) this.#atHighest += run;
    if (value === this.#lowest) this.#atLowest += run;
  }

  flags(): QualityFlag[] {
    const flags: QualityFlag[] = [];
    const share = (count: number) => (this.#count > 0 ? count / this.#count : 0);
    if (this.#missing > 0)
      flags.push(
        flag(`${this.#name}-missing-samples`, share(this.#missing), { samples: this.#missing }),
      );
    const clipped = share(this.#atHighest + this.#atLowest);
    if (clipped > CLIPPED_SHARE) flags.push(flag(`${this.#name}-clipped`, clipped));
    if (share(this.#held) > HELD_SHARE && clipped <= CLIPPED_SHARE)
      flags.push(flag(`${this.#name}-held`, share(this.#held)));
    return flags;
  }
}

/** Says that a sampling rate is too low for what is claimed from it; empty from 5 kHz up. */
export function sampleRateFlags(sampleRateHz: number): QualityFlag[] {
  if (sampleRateHz >= FULL_RATE_HZ) return [];
  return [flag('sample-rate-low', 1, { of: 'trace', sampleRateHz, enoughHz: FULL_RATE_HZ })];
}
