import { explainLinear, type LinearScorer, scoreLinear } from './linear-scorer.js';
import { explainTrees, scoreTrees, type TreeScorer } from './tree-scorer.js';

/** Scores a feature vector, one score a class. */
export type Scorer = TreeScorer | LinearScorer;

/** Scores of a feature vector, one a class; differences of scores are log-odds before calibration. */
export function score(scorer: Scorer, values: Float64Array): Float64Array {
  return scorer.kind === 'trees' ? scoreTrees(scorer, values) : scoreLinear(scorer, values);
}

/** What each feature added to the score of class `k`. */
export function explain(scorer: Scorer, values: Float64Array, k: number): Float64Array {
  return scorer.kind === 'trees'
    ? explainTrees(scorer, values, k)
    : explainLinear(scorer, values, k);
}
