import type { Marks } from './types.js';

const MOST = 120_000;
/** Marks are kept in steps of 10 µs. */
export const MARK_S = 1e-5;

/** Times of events, in order; beyond the first 120,000 they are only counted. */
export class MarkList {
  readonly #starts: number[] = [];
  readonly #lengths: number[] = [];

  add(startS: number, lengthS: number): void {
    if (this.#starts.length === MOST) return;
    this.#starts.push(Math.round(startS / MARK_S));
    this.#lengths.push(Math.round(lengthS / MARK_S));
  }

  /** Those within the arc intervals; null when there are none. */
  within(
    what: Marks['what'],
    total: number,
    arcIntervals: readonly { startS: number; endS: number }[],
  ): Marks | null {
    const kept = this.#starts.flatMap((start, k) =>
      arcIntervals.some((one) => start * MARK_S >= one.startS && start * MARK_S < one.endS)
        ? [k]
        : [],
    );
    if (kept.length === 0) return null;
    return {
      what,
      total: Math.max(total, kept.length),
      starts: Uint32Array.from(kept, (k) => this.#starts[k]!),
      lengths: Uint32Array.from(kept, (k) => this.#lengths[k]!),
    };
  }
}
