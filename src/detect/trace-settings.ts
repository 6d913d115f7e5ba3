/**
 * Limits of the arc-on decision from a voltage and/or current trace. The voltage span is wide enough for
 * an offset of some volts either way; common practice, no source, unless said otherwise.
 */
export interface TraceArcSettings {
  /** Lowest tick voltage that an arc can have (arcs of consumable wire burn above about 14 V). */
  lowestV: number;
  /** Highest: open circuit of many sources starts above this. */
  highestV: number;
  /** A tick below this (hum around zero) speaks against an arc for a while. */
  negativeV: number;
  /** Current that must be there to start, where current is measured. */
  startA: number;
  /** Current below which a tick does not count as burning. */
  holdA: number;
  /** Least fluctuation beyond hum and ramps, from voltage alone. */
  fluctuationV: number;
  /** Least fluctuation where the current shows that something burns. */
  fluctuationWithCurrentV: number;
  /** Slow fluctuation must exceed this multiple of what white sensor noise would leave. */
  whiteNoiseFactor: number;
  /** A leap of the tick voltage as only shorts, ignitions and pulses make it. */
  leapV: number;
  /** A fall from above the highest arc voltage by this much at once is a striking arc … */
  strikeV: number;
  /** … and then white noise of this much will do, since an open circuit would not have come down. */
  struckNoiseV: number;
  /** Unless the voltage slides as the discharge of a source does. */
  struckSlopeVPerS: number;
  /** Seconds of mostly burning ticks before an arc is believed. */
  startHoldS: number;
  /** Seconds without a burning tick before an arc is over: longer than any stubbing short. */
  stopHoldS: number;
}

export const DEFAULT_GATE_SETTINGS: TraceArcSettings = {
  lowestV: 9,
  highestV: 48,
  negativeV: -6,
  startA: 15,
  holdA: 10,
  fluctuationV: 0.04,
  fluctuationWithCurrentV: 0.02,
  whiteNoiseFactor: 2,
  leapV: 4.5,
  strikeV: 10,
  struckNoiseV: 0.1,
  struckSlopeVPerS: 15,
  startHoldS: 0.15,
  stopHoldS: 0.2,
};
