import * as z from 'zod/mini';
import { explainLinear, linearScorerSchema, scoreLinear } from './linear-scorer.js';
import { explainTrees, scoreTrees, treeScorerSchema } from './tree-scorer.js';

export const scorerSchema = z.discriminatedUnion('kind', [treeScorerSchema, linearScorerSchema]);
export type Scorer = z.infer<typeof scorerSchema>;

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
