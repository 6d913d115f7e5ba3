import type { Random } from '../../../core/index.js';
import { softmax, type TreeScorer } from '../../../model/index.js';
import { ABSENT_BIN, type BinnedFeatures, binFeatures } from './binning.js';
import { growTree, type TreeOptions } from './grow-tree.js';
import { balancedWeights, type Rows } from './rows.js';

export interface BoostOptions extends TreeOptions {
  rounds: number;
  /** Share of the rows and of the features that a tree may see. */
  rowShare: number;
  featureShare: number;
}

export const BOOST_DEFAULTS: BoostOptions = {
  rounds: 120,
  depth: 4,
  rate: 0.1,
  ridge: 5,
  leastHessian: 10,
  rowShare: 0.5,
  featureShare: 0.5,
};

/**
 * Gradient-boosted trees for `classes` classes (softmax), or for two with one score (logistic, class 1
 * against class 0) when `classes` is 1.
 */
export function boostTrees(
  rows: Rows,
  classes: number,
  options: BoostOptions,
  random: Random,
): TreeScorer {
  const data = binFeatures(rows.values);
  const weights = balancedWeights(rows, Math.max(2, classes));
  const n = rows.values.length;
  const scores = Array.from({ length: classes }, () => new Float64Array(n));
  const scorer: TreeScorer = {
    kind: 'trees',
    bias: new Array<number>(classes).fill(0),
    trees: Array.from({ length: classes }, () => []),
  };
  for (let round = 0; round < options.rounds; round++) {
    const chosen = Int32Array.from(sample(n, options.rowShare, random));
    const probabilities = probabilitiesOf(scores, n);
    for (let k = 0; k < classes; k++) {
      const { gradient, hessian } = derivatives(probabilities[k]!, rows.label, weights, k, classes);
      const features = sample(data.edges.length, options.featureShare, random);
      const tree = growTree(data, gradient, hessian, chosen, features, options);
      scorer.trees[k]!.push(tree);
      addTree(scores[k]!, tree, data);
    }
  }
  return scorer;
}

function probabilitiesOf(scores: readonly Float64Array[], n: number): Float64Array[] {
  if (scores.length === 1) return [scores[0]!.map((score) => 1 / (1 + Math.exp(-score)))];
  const result = scores.map(() => new Float64Array(n));
  const row = new Float64Array(scores.length);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < scores.length; k++) row[k] = scores[k]![i]!;
    const p = softmax(row);
    for (let k = 0; k < scores.length; k++) result[k]![i] = p[k]!;
  }
  return result;
}

function derivatives(
  p: Float64Array,
  label: Uint8Array,
  weights: Float64Array,
  k: number,
  classes: number,
) {
  const target = classes === 1 ? 1 : k;
  const gradient = p.map((value, i) => weights[i]! * (value - (label[i] === target ? 1 : 0)));
  const hessian = p.map((value, i) => weights[i]! * Math.max(value * (1 - value), 1e-6));
  return { gradient, hessian };
}

function addTree(
  scores: Float64Array,
  tree: TreeScorer['trees'][number][number],
  data: BinnedFeatures,
): void {
  const bin = tree.feature.map((feature, node) =>
    feature < 0 ? -1 : data.edges[feature]!.indexOf(tree.threshold[node]!),
  );
  for (let i = 0; i < scores.length; i++) {
    let node = 0;
    while (tree.feature[node]! >= 0) {
      const at = data.bins[tree.feature[node]!]![i]!;
      const left = at === ABSENT_BIN ? tree.absentLeft[node]! : at <= bin[node]!;
      node = left ? tree.left[node]! : tree.right[node]!;
    }
    scores[i] = scores[i]! + tree.value[node]!;
  }
}

/** A share of the numbers below n, in order. */
function sample(n: number, share: number, random: Random): number[] {
  const chosen: number[] = [];
  for (let i = 0; i < n; i++) if (random.next() < share) chosen.push(i);
  return chosen.length > 0 ? chosen : [random.integer(0, n - 1)];
}
