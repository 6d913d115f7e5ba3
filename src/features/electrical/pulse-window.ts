import { trainOf } from './intervals.js';
import type { PulseSlot } from './pulse-tracker.js';
import { mainsMultipleNear } from './tone.js';

/** Pulses of a window. */
export interface PulseWindow {
  /** 0 when the trace shows no pulses. */
  rateHz: number;
  /** Upper less lower level; NaN for a flat trace. */
  swing: number;
  separation: number;
  dutyShare: number;
  clockCv: number;
  evident: boolean;
}

/** Two levels must hold this share of the variance: a flat spread holds 0.75, a sine 0.81 (plain maths). */
const LEAST_SEPARATION = 0.76;
/** What is no better separated than a sine must not keep time with the mains. */
const SINE_SEPARATION = 0.83;
/** Rises must come about evenly to be pulses of a source at all. */
const MOST_UNEVEN = 0.25;

/** Judges the rises of a window: pulses need two clean levels at least `leastSwing` apart and a clock. */
export function pulseWindow(
  slots: readonly PulseSlot[],
  slotSamples: number,
  sampleRateHz: number,
  leastSwing: number,
): PulseWindow {
  const timesS: number[] = [];
  let highSamples = 0;
  for (const slot of slots) {
    for (const rise of slot.rises) timesS.push(rise / sampleRateHz);
    highSamples += slot.highSamples;
  }
  const { levels } = slots[slots.length - 1]!;
  const swing = levels.high - levels.low;
  const train = trainOf(timesS);
  const evident =
    swing >= leastSwing &&
    train.robustCv < MOST_UNEVEN &&
    levels.separation >= LEAST_SEPARATION &&
    (levels.separation >= SINE_SEPARATION || Number.isNaN(mainsMultipleNear(train.rateHz, 0.3)));
  return {
    rateHz: evident ? train.rateHz : 0,
    swing,
    separation: levels.separation,
    dutyShare: evident ? highSamples / (slots.length * slotSamples) : Number.NaN,
    clockCv: swing >= leastSwing ? train.robustCv : Number.NaN,
    evident,
  };
}
