import { quantileOfSorted } from '../../dsp/index.js';
import type { Short } from './short-detector.js';

/** A short of this length is never incipient, whatever the others are (common practice, no source). */
const LONGEST_INCIPIENT_S = 0.002;
/** Share of the usual duration below which a touch carries no metal over (common practice, no source). */
const SHARE_OF_MEDIAN = 0.35;
/** Where current is known: a bridge that carried metal had driven the current above this multiple of the arc current. */
const BREAK_OVER_ARC = 1.25;
/** Shorts remembered for the usual duration. */
const REMEMBERED = 63;

/**
 * Tells incipient shorts (touches without transfer) from transferring ones, by the run's own durations: a
 * fixed 2 ms would condemn a regular run of 1 ms shorts.
 */
export class IncipientRule {
  readonly #recent: number[] = [];
  #sorted: Float64Array | null = null;

  /** Remembers the duration of a short. */
  learn(durationS: number): void {
    this.#recent.push(durationS);
    if (this.#recent.length > REMEMBERED) this.#recent.shift();
    this.#sorted = null;
  }

  /** Median duration of the shorts remembered; NaN when there are none. */
  medianS(): number {
    if (this.#recent.length === 0) return Number.NaN;
    this.#sorted ??= Float64Array.from(this.#recent).sort();
    return quantileOfSorted(this.#sorted, 0.5);
  }

  /** `arcA` is the mean arc-phase current, NaN when unknown; then the duration alone decides. */
  isIncipient(short: Short, durationS: number, arcA: number): boolean {
    if (!(durationS < Math.min(LONGEST_INCIPIENT_S, SHARE_OF_MEDIAN * this.medianS())))
      return false;
    if (Number.isNaN(short.breakA) || Number.isNaN(arcA)) return true;
    return Math.abs(short.breakA) < BREAK_OVER_ARC * Math.abs(arcA);
  }
}
