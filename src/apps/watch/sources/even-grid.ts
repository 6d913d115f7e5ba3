import { type Made, message } from '../../../messages/index.js';
import type { Losses } from './types.js';

/** Longest hole that is bridged by a straight line, s. Short circuits are as short; longer ones must not be made up. */
const BRIDGE_S = 0.003;
/** How fast the even grid follows a clock that drifts. */
const FOLLOW = 0.02;
/** A clock set back by less is a row out of order, by more a logger that began anew, s. */
const RESTART_S = 0.5;
/** Time before a drift is stated, s. */
const DRIFT_AFTER_S = 10;

/** A hole too long to bridge, or a clock that began anew. */
export interface Break {
  lostS: number | null;
  why: Made;
}

/** Places timed rows on an even time base, and counts what was missing, late or off its place. */
export class EvenGrid {
  readonly #rateHz: number;
  readonly #losses: Losses;
  #placeS: number | undefined;
  #lastS = 0;
  #last: number[] = [];
  #firstS = 0;
  #count = 0;

  constructor(rateHz: number, losses: Losses) {
    this.#rateHz = rateHz;
    this.#losses = losses;
  }

  /** Rows to hand on, ending with this one; `late` drops a row out of order. */
  place(timeS: number, values: number[]): number[][] | 'late' | Break {
    const stepS = 1 / this.#rateHz;
    if (this.#placeS === undefined) return this.#begin(timeS, values);
    if (timeS < this.#lastS - RESTART_S) {
      this.#begin(timeS, values);
      this.#losses.gaps++;
      return { lostS: null, why: message('watch-clock-anew') };
    }
    if (timeS <= this.#lastS) {
      this.#losses.badRows++;
      return 'late';
    }
    const expectedS = this.#placeS + stepS;
    const missing = Math.max(0, Math.round((timeS - expectedS) * this.#rateHz));
    const offS = timeS - expectedS - missing * stepS;
    this.#losses.worstJitterS = Math.max(this.#losses.worstJitterS, Math.abs(offS));
    if (missing > Math.max(2, BRIDGE_S * this.#rateHz)) {
      this.#losses.lostSamples += missing;
      this.#losses.gaps++;
      this.#begin(timeS, values);
      return {
        lostS: missing * stepS,
        why: message('watch-samples-missing', { samples: missing }),
      };
    }
    const rows = this.#bridge(missing, values);
    this.#placeS = expectedS + missing * stepS + FOLLOW * offS;
    this.#lastS = timeS;
    this.#last = values;
    this.#count += rows.length;
    this.#drift();
    return rows;
  }

  #begin(timeS: number, values: number[]): number[][] {
    this.#placeS = this.#lastS = this.#firstS = timeS;
    this.#last = values;
    this.#count = 0;
    return [values];
  }

  #bridge(missing: number, values: number[]): number[][] {
    this.#losses.lostSamples += missing;
    this.#losses.bridgedSamples += missing;
    const rows: number[][] = [];
    for (let i = 1; i <= missing; i++) {
      const part = i / (missing + 1);
      rows.push(values.map((value, c) => this.#last[c]! + part * (value - this.#last[c]!)));
    }
    rows.push(values);
    return rows;
  }

  #drift(): void {
    const spanS = this.#lastS - this.#firstS;
    if (spanS < DRIFT_AFTER_S) return;
    this.#losses.driftPpm = 1e6 * (this.#count / spanS / this.#rateHz - 1);
  }
}
