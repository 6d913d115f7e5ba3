import * as z from 'zod/mini';

const NODE_LIMIT = 1023;
const FEATURE_LIMIT = 999;

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

/** Checked by hand: a model holds many thousand nodes, and a general checker would take longer than a weld. */
export const treeSchema = z.custom<Tree>(isTree, {
  message: 'a tree: arrays of one length, finite numbers, children after their parents',
});

/** Sums of trees, one list a class: class k scores `bias[k]` plus its trees. */
export const treeScorerSchema = z.object({
  kind: z.literal('trees'),
  bias: z.array(z.number()).check(z.minLength(1), z.maxLength(16)),
  trees: z
    .array(z.array(treeSchema).check(z.maxLength(2000)))
    .check(z.minLength(1), z.maxLength(16)),
});
export type TreeScorer = z.infer<typeof treeScorerSchema>;

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

function isTree(value: unknown): value is Tree {
  if (typeof value !== 'object' || value === null) return false;
  const { feature, threshold, left, right, absentLeft, value: response } = value as Partial<Tree>;
  if (!Array.isArray(feature) || feature.length < 1 || feature.length > NODE_LIMIT) return false;
  const n = feature.length;
  return (
    feature.every((one) => Number.isInteger(one) && one >= -1 && one <= FEATURE_LIMIT) &&
    isList(threshold, n, Number.isFinite) &&
    isList(response, n, Number.isFinite) &&
    isList(left, n, Number.isInteger) &&
    isList(right, n, Number.isInteger) &&
    isList(absentLeft, n, (one) => typeof one === 'boolean') &&
    childrenFollow(feature, left as number[], right as number[])
  );
}

function isList(value: unknown, length: number, holds: (one: unknown) => boolean): boolean {
  return Array.isArray(value) && value.length === length && value.every(holds);
}

/** Children stand after their parent, so no document can make a walk that never ends. */
function childrenFollow(feature: number[], left: number[], right: number[]): boolean {
  const isChild = (child: number, parent: number) => child > parent && child < feature.length;
  return feature.every((one, i) => one < 0 || (isChild(left[i]!, i) && isChild(right[i]!, i)));
}
