/**
 * A linear score a class over standardised features: `bias[k] + Σ weight[k][i]·z_i` with
 * `z = (value − mean) / deviation`, cut at ±4 so that one strange feature cannot decide alone.
 * An absent value counts as the mean.
 */
export interface LinearScorer {
  kind: 'linear';
  mean: number[];
  deviation: number[];
  bias: number[];
  weight: number[][];
}

const CUT = 4;

/** Standardised, cut, absent as 0: the form in which linear scorers see a feature vector. */
export function standardise(
  values: Float64Array,
  mean: ArrayLike<number>,
  deviation: ArrayLike<number>,
): Float64Array {
  return Float64Array.from(values, (value, i) => {
    const z = (value - mean[i]!) / deviation[i]!;
    return Number.isNaN(z) ? 0 : Math.max(-CUT, Math.min(CUT, z));
  });
}

export function scoreLinear(scorer: LinearScorer, values: Float64Array): Float64Array {
  const z = standardise(values, scorer.mean, scorer.deviation);
  return Float64Array.from(scorer.bias, (bias, k) => {
    const weight = scorer.weight[k]!;
    let score = bias;
    for (let i = 0; i < z.length; i++) score += weight[i]! * z[i]!;
    return score;
  });
}

/** What each feature added to the score of class `k`, against a vector of means. */
export function explainLinear(scorer: LinearScorer, values: Float64Array, k: number): Float64Array {
  const z = standardise(values, scorer.mean, scorer.deviation);
  return z.map((value, i) => value * scorer.weight[k]![i]!);
}
