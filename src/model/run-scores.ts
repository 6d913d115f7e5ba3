import type { FittedModel } from './model-document.js';
import { score } from './scorer.js';

/**
 * Centred scores of a run: what its means and spreads say plus the mean of what its windows say one by
 * one. The first sees how the windows differ, the second what each of them shows; neither alone is as good
 * on families it has not seen.
 */
export function runScores(
  { runScorer }: Pick<FittedModel, 'runScorer'>,
  vector: Float64Array,
  windowScores: Float64Array,
): Float64Array {
  return centred(score(runScorer, vector).map((one, k) => one + windowScores[k]!));
}

/** Scores count by their differences only; centred ones can be flattened towards no opinion. */
export function centred(scores: Float64Array): Float64Array {
  const mean = scores.reduce((sum, one) => sum + one, 0) / scores.length;
  return scores.map((one) => one - mean);
}
