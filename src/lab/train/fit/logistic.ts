import { type LinearScorer, softmax, standardise } from '../../../model/index.js';
import { balancedWeights, type Rows } from './rows.js';
import { spreadOf } from './spread.js';

/**
 * Multinomial logistic regression with a ridge penalty on standardised features, by accelerated
 * gradient descent (Nesterov) with a fixed step from the bound on the curvature.
 */
export function fitLogistic(
  rows: Rows,
  classes: number,
  ridge = 0.002,
  iterations = 400,
): LinearScorer {
  const { mean, deviation } = spreadOf(rows.values);
  const z = rows.values.map((values) => standardise(values, mean, deviation));
  const weights = balancedWeights(rows, classes);
  const n = z.length;
  const width = mean.length + 1;
  // Rows have |z| ≤ 4 each, but a typical squared norm is the number of features.
  const step = 1 / (0.5 * width + ridge);
  let current = new Float64Array(classes * width);
  let ahead = current.slice();
  for (let iteration = 1; iteration <= iterations; iteration++) {
    const gradient = gradientOf(z, rows.label, weights, ahead, classes);
    const next = ahead.map((value, i) => {
      const penalty = i % width === width - 1 ? 0 : ridge * value;
      return value - step * (gradient[i]! / n + penalty);
    });
    const momentum = (iteration - 1) / (iteration + 2);
    ahead = next.map((value, i) => value + momentum * (value - current[i]!));
    current = next;
  }
  return {
    kind: 'linear',
    mean,
    deviation,
    bias: Array.from({ length: classes }, (_, k) => current[k * width + width - 1]!),
    weight: Array.from({ length: classes }, (_, k) =>
      Array.from(current.subarray(k * width, (k + 1) * width - 1)),
    ),
  };
}

function gradientOf(
  z: readonly Float64Array[],
  label: Uint8Array,
  weights: Float64Array,
  parameters: Float64Array,
  classes: number,
): Float64Array {
  const width = z[0]!.length + 1;
  const gradient = new Float64Array(classes * width);
  const scores = new Float64Array(classes);
  for (let i = 0; i < z.length; i++) {
    const row = z[i]!;
    for (let k = 0; k < classes; k++) {
      let score = parameters[k * width + width - 1]!;
      for (let f = 0; f < width - 1; f++) score += parameters[k * width + f]! * row[f]!;
      scores[k] = score;
    }
    const p = softmax(scores);
    for (let k = 0; k < classes; k++) {
      const error = weights[i]! * (p[k]! - (label[i] === k ? 1 : 0));
      for (let f = 0; f < width - 1; f++)
        gradient[k * width + f] = gradient[k * width + f]! + error * row[f]!;
      gradient[k * width + width - 1] = gradient[k * width + width - 1]! + error;
    }
  }
  return gradient;
}
