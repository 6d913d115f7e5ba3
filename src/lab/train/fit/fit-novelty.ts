import { quantile } from '../../../dsp/index.js';
import { type Novelty, noveltyDistance, standardise } from '../../../model/index.js';
import type { Rows } from './rows.js';
import { centreAndWidth } from './spread.js';

/** Shrinkage of the covariance towards the unit matrix, and floor of its diagonal. */
const SHRINK = 0.1;

/**
 * Class means, common covariance and the limit that `keep` of the rows stay within.
 * @param keep share of the fitted windows inside the limit, e.g. 0.999
 */
export function fitNovelty(rows: Rows, classes: number, keep: number): Novelty {
  const { centre: mean, deviation } = centreAndWidth(rows.values);
  const z = rows.values.map((values) => standardise(values, mean, deviation));
  const centres = Array.from({ length: classes }, (_, k) => centreOf(z, rows.label, k));
  const covariance = withinCovariance(z, rows.label, centres);
  const factor = inverseCholesky(covariance);
  const novelty: Novelty = {
    mean,
    deviation,
    // A class without rows has no place: its stand-in would make the middle of everything known ground.
    centres: centres
      .filter((_, k) => rows.label.includes(k))
      .map((centre) => Array.from(centre, digits)),
    factor: factor.map(digits),
    limit: 1,
  };
  const distances = rows.values.map((values) => noveltyDistance(novelty, values));
  return { ...novelty, limit: digits(quantile(distances, keep)) };
}

function centreOf(z: readonly Float64Array[], label: Uint8Array, k: number): Float64Array {
  const sum = new Float64Array(z[0]!.length);
  let count = 0;
  z.forEach((row, i) => {
    if (label[i] !== k) return;
    count++;
    for (let f = 0; f < sum.length; f++) sum[f] = sum[f]! + row[f]!;
  });
  return sum.map((value) => value / Math.max(1, count));
}

function withinCovariance(
  z: readonly Float64Array[],
  label: Uint8Array,
  centres: readonly Float64Array[],
): Float64Array[] {
  const n = z[0]!.length;
  const matrix = Array.from({ length: n }, () => new Float64Array(n));
  z.forEach((row, r) => {
    const centre = centres[label[r]!]!;
    for (let i = 0; i < n; i++)
      for (let j = 0; j <= i; j++)
        matrix[i]![j] = matrix[i]![j]! + (row[i]! - centre[i]!) * (row[j]! - centre[j]!);
  });
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++)
      matrix[i]![j] = ((1 - SHRINK) * matrix[i]![j]!) / z.length + (i === j ? SHRINK : 0);
  return matrix;
}

/** Rows of the lower triangle of L⁻¹, where L·Lᵀ is the matrix given by its lower triangle. */
export function inverseCholesky(matrix: readonly Float64Array[]): number[] {
  const n = matrix.length;
  const lower = matrix.map((row) => row.slice());
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
      lower[i]![j] = i === j ? Math.sqrt(sum) : sum / lower[j]![j]!;
    }
  const inverse: number[] = [];
  for (let i = 0; i < n; i++) {
    const row = new Float64Array(i + 1);
    row[i] = 1 / lower[i]![i]!;
    for (let j = i - 1; j >= 0; j--) {
      let sum = 0;
      for (let k = j; k < i; k++) sum += lower[i]![k]! * inverse[(k * (k + 1)) / 2 + j]!;
      row[j] = -sum / lower[i]![i]!;
    }
    inverse.push(...row);
  }
  return inverse;
}

function digits(value: number): number {
  return Number(value.toPrecision(6));
}
