/**
 * One regression tree in flat arrays, node 0 the root. `feature` −1 marks a leaf. A window goes left
 * when its value is at most `threshold`; an absent value goes where `absentLeft` says. `value` is the
 * mean response at every node, inner ones too, so that a prediction can be told apart by feature.
 */
export interface Tree {
  feature: number[];
  threshold: number[];
  left: number[];
  right: number[];
  absentLeft: boolean[];
  value: number[];
}

/** Sums of trees, one list a class: class k scores `bias[k]` plus its trees. */
export interface TreeScorer {
  kind: 'trees';
  bias: number[];
  trees: Tree[][];
}

/** Scores of a feature vector, one a class. */
export function scoreTrees(scorer: TreeScorer, values: Float64Array): Float64Array {
  const scores = Float64Array.from(scorer.bias);
  for (let k = 0; k < scores.length; k++)
    for (const tree of scorer.trees[k]!) scores[k] = scores[k]! + tree.value[leafOf(tree, values)]!;
  return scores;
}

/**
 * What each feature added to the score of one class: along each path, the change of the node's mean
 * is given to the feature that was asked. The contributions and the roots add up to the score.
 */
export function explainTrees(scorer: TreeScorer, values: Float64Array, k: number): Float64Array {
  const contributions = new Float64Array(values.length);
  for (const tree of scorer.trees[k]!) {
    let node = 0;
    while (tree.feature[node]! >= 0) {
      const next = childOf(tree, node, values);
      const feature = tree.feature[node]!;
      contributions[feature] = contributions[feature]! + tree.value[next]! - tree.value[node]!;
      node = next;
    }
  }
  return contributions;
}

function leafOf(tree: Tree, values: Float64Array): number {
  let node = 0;
  while (tree.feature[node]! >= 0) node = childOf(tree, node, values);
  return node;
}

function childOf(tree: Tree, node: number, values: Float64Array): number {
  const value = values[tree.feature[node]!]!;
  const left = Number.isNaN(value) ? tree.absentLeft[node]! : value <= tree.threshold[node]!;
  return left ? tree.left[node]! : tree.right[node]!;
}
