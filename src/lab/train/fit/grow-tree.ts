import type { Tree } from '../../../model/index.js';
import { ABSENT_BIN, BIN_LIMIT, type BinnedFeatures } from './binning.js';

export interface TreeOptions {
  depth: number;
  /** Least sum of second derivatives in a leaf: keeps leaves from resting on a few rows. */
  leastHessian: number;
  /** Ridge on the leaf values. */
  ridge: number;
  /** Factor on the leaf values. */
  rate: number;
}

interface Split {
  feature: number;
  bin: number;
  absentLeft: boolean;
  gain: number;
}

/**
 * One regression tree on gradients and second derivatives, by histograms (the method of gradient
 * boosting with a second-order objective: Chen & Guestrin, KDD 2016, sections 2.2 and 3.4).
 * @param rows indices of the rows to use @param features indices of the features that may be asked
 */
export function growTree(
  data: BinnedFeatures,
  gradient: Float64Array,
  hessian: Float64Array,
  rows: Int32Array,
  features: readonly number[],
  options: TreeOptions,
): Tree {
  const tree: Tree = { feature: [], threshold: [], left: [], right: [], absentLeft: [], value: [] };
  const grow = (members: Int32Array, depth: number): number => {
    const node = tree.feature.length;
    const { g, h } = sums(gradient, hessian, members);
    tree.feature.push(-1);
    tree.threshold.push(0);
    tree.left.push(-1);
    tree.right.push(-1);
    tree.absentLeft.push(true);
    tree.value.push(round((-options.rate * g) / (h + options.ridge)));
    if (depth === 0) return node;
    const split = bestSplit(data, gradient, hessian, members, features, g, h, options);
    if (!split) return node;
    const goesLeft = (row: number) => {
      const bin = data.bins[split.feature]![row]!;
      return bin === ABSENT_BIN ? split.absentLeft : bin <= split.bin;
    };
    tree.feature[node] = split.feature;
    tree.threshold[node] = data.edges[split.feature]![split.bin]!;
    tree.absentLeft[node] = split.absentLeft;
    tree.left[node] = grow(members.filter(goesLeft), depth - 1);
    tree.right[node] = grow(
      members.filter((row) => !goesLeft(row)),
      depth - 1,
    );
    return node;
  };
  grow(rows, options.depth);
  return tree;
}

function bestSplit(
  data: BinnedFeatures,
  gradient: Float64Array,
  hessian: Float64Array,
  rows: Int32Array,
  features: readonly number[],
  g: number,
  h: number,
  options: TreeOptions,
): Split | null {
  let best: Split | null = null;
  const gSum = new Float64Array(BIN_LIMIT + 1);
  const hSum = new Float64Array(BIN_LIMIT + 1);
  const parent = (g * g) / (h + options.ridge);
  for (const feature of features) {
    const bins = data.bins[feature]!;
    gSum.fill(0);
    hSum.fill(0);
    for (const row of rows) {
      const bin = bins[row]!;
      gSum[bin] = gSum[bin]! + gradient[row]!;
      hSum[bin] = hSum[bin]! + hessian[row]!;
    }
    for (const absentLeft of hSum[ABSENT_BIN]! > 0 ? [true, false] : [true]) {
      let gLeft = absentLeft ? gSum[ABSENT_BIN]! : 0;
      let hLeft = absentLeft ? hSum[ABSENT_BIN]! : 0;
      for (let bin = 0; bin < data.edges[feature]!.length; bin++) {
        gLeft += gSum[bin]!;
        hLeft += hSum[bin]!;
        const hRight = h - hLeft;
        if (hLeft < options.leastHessian || hRight < options.leastHessian) continue;
        const gRight = g - gLeft;
        const gain =
          (gLeft * gLeft) / (hLeft + options.ridge) +
          (gRight * gRight) / (hRight + options.ridge) -
          parent;
        if (gain > (best?.gain ?? 1e-6)) best = { feature, bin, absentLeft, gain };
      }
    }
  }
  return best;
}

function sums(gradient: Float64Array, hessian: Float64Array, rows: Int32Array) {
  let g = 0;
  let h = 0;
  for (const row of rows) {
    g += gradient[row]!;
    h += hessian[row]!;
  }
  return { g, h };
}

/** Five digits are plenty for a leaf and keep the document small. */
function round(value: number): number {
  return Number(value.toPrecision(5));
}
