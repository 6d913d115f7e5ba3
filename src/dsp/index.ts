export { BiquadCascade, type BiquadCoefficients, butterworth } from './biquad.js';
export { concat } from './concat.js';
export { RealFft } from './fft.js';
export { selectRank } from './select.js';
export {
  coefficientOfVariation,
  mean,
  median,
  medianAbsoluteDeviation,
  quantile,
  quantileOfSorted,
  standardDeviation,
} from './statistics.js';
export { hannWindow, windowEnergy } from './window.js';
