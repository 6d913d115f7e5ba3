/** The average loudness about the onsets of a window, in octaves of amplitude. NaN with too few onsets. */
export interface OnsetShape {
  /** How much louder the first half millisecond is than the two milliseconds before. */
  rise: number;
  /** Share of the rise that is gone 1 to 2 ms later: an impulse dies away, a pulse of current stays. */
  decaySoon: number;
  /** Share of the rise that is gone 3 to 5 ms later. */
  decayLate: number;
  /** How much quieter the two milliseconds before are than 5 to 8 ms before: a short puts the arc out. */
  gapBefore: number;
}

const REACH = 32;
const MINIMUM_EVENTS = 5;

/**
 * Shape of the average event, from the envelope laid on top of itself at each onset.
 * @param log2Amplitude frames of 0.25 ms @param at frames of the onsets
 */
export function onsetShape(log2Amplitude: Float64Array, at: readonly number[]): OnsetShape {
  const usable = at.filter((frame) => frame >= REACH && frame < log2Amplitude.length - REACH);
  if (usable.length < MINIMUM_EVENTS)
    return { rise: NaN, decaySoon: NaN, decayLate: NaN, gapBefore: NaN };
  const mean = (from: number, to: number): number => {
    let sum = 0;
    for (const frame of usable)
      for (let i = frame + from; i < frame + to; i++) sum += log2Amplitude[i]!;
    return sum / (usable.length * (to - from));
  };
  const peak = mean(0, 2);
  const before = mean(-8, -1);
  const rise = peak - before;
  const share = (level: number) => Math.max(-1, Math.min(2, (peak - level) / rise));
  return {
    rise,
    decaySoon: share(mean(4, 8)),
    decayLate: share(mean(12, 20)),
    gapBefore: mean(-32, -20) - before,
  };
}
