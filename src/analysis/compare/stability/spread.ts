import {
  coefficientOfVariation,
  mean,
  median,
  medianAbsoluteDeviation,
  standardDeviation,
} from '../../../dsp/index.js';

/** Level and spread of a list of times or amplitudes, in the unit of the list. */
export interface Spread {
  count: number;
  mean: number;
  /** Population standard deviation. */
  sd: number;
  /** Standard deviation over mean: the regularity figure; 0 is a clock. */
  cv: number;
  /** The robust pair: median, and median absolute deviation from it, unscaled. */
  median: number;
  mad: number;
}

/**
 * Regularity of intervals or durations. Null with fewer than three values, with any value that is
 * not finite, and where the mean is 0. A constant list has a spread of 0.
 *
 * Median and MAD of period and duration as a measure of stability: study of covered electrodes,
 * SciELO (2009). The coefficient of variation is common practice, no source.
 */
export function spreadOf(values: ArrayLike<number>): Spread | null {
  if (values.length < 3 || !Array.from(values).every(Number.isFinite)) return null;
  const centre = mean(values);
  if (centre === 0) return null;
  return {
    count: values.length,
    mean: centre,
    sd: standardDeviation(values),
    cv: coefficientOfVariation(values),
    median: median(values),
    mad: medianAbsoluteDeviation(values),
  };
}
