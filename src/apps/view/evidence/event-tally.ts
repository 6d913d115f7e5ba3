import { addInterval, INTERVAL_BINS, intervalCounts } from './interval-bins.js';
import { MarkList } from './mark-list.js';
import { TimedSums } from './timed-sums.js';
import type { Evidence, IntervalCounts, Marks } from './types.js';

type ArcIntervals = readonly { startS: number; endS: number }[];
export type EventKind = 'short' | 'drop' | 'pulse';
const KINDS: readonly EventKind[] = ['short', 'drop', 'pulse'];
const KIND_WORDS: Record<EventKind, string> = {
  short: 'short circuits',
  drop: 'steps of the voltage as drops leave',
  pulse: 'pulses',
};

/** When shorts, drops and pulses happened: marks, rates over time, intervals. */
export class EventTally {
  readonly #rates = new TimedSums(KINDS.length, { slotS: 0.25, most: 2048 });
  readonly #intervals = new TimedSums(KINDS.length * INTERVAL_BINS, { slotS: 0.25, most: 256 });
  readonly #marks = { short: new MarkList(), drop: new MarkList() };
  readonly #total: Record<EventKind, number> = { short: 0, drop: 0, pulse: 0 };
  readonly #last: Record<EventKind, number> = { short: NaN, drop: NaN, pulse: NaN };

  /** Events of a kind come in order of time; different kinds may trail each other a little. */
  add(kind: EventKind, timeS: number, lengthS: number): void {
    this.#total[kind]++;
    const k = KINDS.indexOf(kind);
    this.#rates.at(timeS)[k]!++;
    addInterval(part(this.#intervals.at(timeS), k), timeS - this.#last[kind]);
    this.#last[kind] = timeS;
    if (kind !== 'pulse') this.#marks[kind].add(timeS, lengthS);
  }

  /** Shorts always; drops only where they are the events of the run. */
  marks(arcIntervals: ArcIntervals, kind: EventKind): Marks[] {
    const shorts = this.#marks.short.within('short circuit', this.#total.short, arcIntervals);
    const drops =
      kind === 'drop' ? this.#marks.drop.within('drop', this.#total.drop, arcIntervals) : null;
    return [shorts, drops].filter((one) => one !== null);
  }

  intervals(arcIntervals: ArcIntervals, kind: EventKind): IntervalCounts | null {
    const sum = this.#intervals.within(arcIntervals);
    return intervalCounts(KIND_WORDS[kind], part(sum, KINDS.indexOf(kind)));
  }

  rate(kind: EventKind): Evidence['eventRate'] {
    if (this.#total[kind] === 0) return null;
    const stepS = this.#rates.slotS;
    const k = KINDS.indexOf(kind);
    const values = Float64Array.from(this.#rates.slots, (slot) => slot[k]! / stepS);
    return { of: KIND_WORDS[kind], startS: 0, stepS, values };
  }
}

function part(counts: Float64Array, kind: number): Float64Array {
  return counts.subarray(kind * INTERVAL_BINS, (kind + 1) * INTERVAL_BINS);
}
