import { type LevelHistogram, splitTwoLevels, type TwoLevels } from './level-histogram.js';

/** What a slot adds about pulses. Times in samples from the start of the arc interval. */
export interface PulseSlot {
  levels: TwoLevels;
  /** Interpolated times at which the trace rose into the upper level. */
  rises: number[];
  highSamples: number;
  /** Sums over samples in the upper and lower state. */
  highSum: number;
  lowSum: number;
}

/**
 * Follows a two-level trace with hysteresis between the levels that its own histogram splits into. It
 * always answers; whether the rises are pulses of the source is judged from separation, swing and clock.
 */
export class PulseTracker {
  #high = false;
  #position = 0;
  #previous = Number.NaN;

  /**
   * `histogram` already holds the slot; levels are sought at or above `from`. A swing below `leastSwing`
   * is not followed: the whole slot counts as lower level.
   */
  push(
    values: Float64Array,
    histogram: LevelHistogram,
    leastSwing: number,
    from?: number,
  ): PulseSlot {
    const levels = splitTwoLevels(histogram, from);
    const slot: PulseSlot = { levels, rises: [], highSamples: 0, highSum: 0, lowSum: 0 };
    const swing = levels.high - levels.low;
    if (!(swing >= leastSwing)) {
      for (let n = 0; n < values.length; n++) slot.lowSum += values[n]!;
      this.#high = false;
    } else this.#walk(values, levels.low + 0.35 * swing, levels.low + 0.65 * swing, slot);
    this.#position += values.length;
    if (values.length > 0) this.#previous = values[values.length - 1]!;
    return slot;
  }

  #walk(values: Float64Array, down: number, up: number, slot: PulseSlot): void {
    let high = this.#high;
    let [highSamples, highSum, lowSum] = [0, 0, 0];
    for (let n = 0; n < values.length; n++) {
      const value = values[n]!;
      if (high) {
        if (value < down) high = false;
      } else if (value > up) {
        high = true;
        const before = n > 0 ? values[n - 1]! : this.#previous;
        const back = before < up ? (value - up) / (value - before) : 0;
        slot.rises.push(this.#position + n - back);
      }
      if (high) {
        highSamples++;
        highSum += value;
      } else lowSum += value;
    }
    this.#high = high;
    slot.highSamples = highSamples;
    slot.highSum = highSum;
    slot.lowSum = lowSum;
  }
}
