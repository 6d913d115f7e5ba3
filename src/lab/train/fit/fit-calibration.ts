import type { Calibration } from '../../../model/index.js';

/** One run (or window) for calibration: its scores, the true class, and its weight. */
export interface ScoredCase {
  scores: Float64Array;
  label: number;
  weight: number;
}

const ITERATIONS = 500;
const OFFSET_RIDGE = 0.02;

/**
 * Slope and offsets that minimise the log loss of `softmax(slope·score + offset)` (temperature scaling
 * with class offsets; Guo et al., ICML 2017, section 4.2), by gradient descent with momentum on the
 * logarithm of the slope. With one score a case it fits the probability of class 1 against class 0.
 */
export function fitCalibration(cases: readonly ScoredCase[], method: string): Calibration {
  const classes = cases[0]?.scores.length ?? 1;
  const total = cases.reduce((sum, one) => sum + one.weight, 0);
  const parameters = new Float64Array(classes + 1);
  const velocity = new Float64Array(classes + 1);
  for (let iteration = 0; iteration < ITERATIONS; iteration++) {
    const gradient = gradientOf(cases, parameters, total);
    for (let i = 0; i < parameters.length; i++) {
      velocity[i] = 0.9 * velocity[i]! - 0.1 * gradient[i]!;
      parameters[i] = parameters[i]! + velocity[i]!;
    }
  }
  return {
    slope: Number(Math.exp(parameters[0]!).toPrecision(6)),
    offset: Array.from(parameters.subarray(1), (value) => Number(value.toPrecision(6))),
    method,
    runs: cases.length,
  };
}

function gradientOf(
  cases: readonly ScoredCase[],
  parameters: Float64Array,
  total: number,
): Float64Array {
  const slope = Math.exp(parameters[0]!);
  const gradient = new Float64Array(parameters.length);
  const p = new Float64Array(parameters.length - 1);
  for (const { scores, label, weight } of cases) {
    for (let k = 0; k < p.length; k++) p[k] = slope * scores[k]! + parameters[k + 1]!;
    toProbabilities(p);
    for (let k = 0; k < p.length; k++) {
      const target = p.length === 1 ? label : label === k ? 1 : 0;
      const error = (weight / total) * (p[k]! - target);
      gradient[0] = gradient[0]! + error * scores[k]! * slope;
      gradient[k + 1] = gradient[k + 1]! + error;
    }
  }
  for (let k = 1; k < parameters.length; k++)
    gradient[k] = gradient[k]! + OFFSET_RIDGE * parameters[k]!;
  return gradient;
}

/** Softmax in place (logistic for one score): no memory is taken, since this runs for every case and step. */
function toProbabilities(p: Float64Array): void {
  if (p.length === 1) {
    p[0] = 1 / (1 + Math.exp(-p[0]!));
    return;
  }
  let top = -Infinity;
  for (const one of p) top = Math.max(top, one);
  let sum = 0;
  for (let k = 0; k < p.length; k++) {
    p[k] = Math.exp(p[k]! - top);
    sum += p[k]!;
  }
  for (let k = 0; k < p.length; k++) p[k] = p[k]! / sum;
}
