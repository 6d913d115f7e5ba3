import { standardise } from './linear-scorer.js';

/**
 * How far a window lies from everything fitted: the smallest Mahalanobis distance to a class mean,
 * with one covariance within the classes. `factor` is the inverse Cholesky factor (lower triangle by
 * rows) of that covariance; a window beyond `limit` is unlike anything seen.
 */
export interface Novelty {
  mean: number[];
  deviation: number[];
  centres: number[][];
  factor: number[];
  limit: number;
}

/** Root mean square of the whitened distance to the nearest class; about 1 for a typical window. */
export function noveltyDistance(novelty: Novelty, values: Float64Array): number {
  const z = standardise(values, novelty.mean, novelty.deviation);
  const n = z.length;
  let nearest = Infinity;
  for (const centre of novelty.centres) {
    let squares = 0;
    for (let i = 0, at = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j <= i; j++) sum += novelty.factor[at++]! * (z[j]! - centre[j]!);
      squares += sum * sum;
    }
    nearest = Math.min(nearest, squares);
  }
  return Math.sqrt(nearest / n);
}
