/** Windows of labelled runs, as fitting sees them. */
export interface Rows {
  /** One feature vector a row; NaN is absent. */
  values: Float64Array[];
  /** Class of each row, counted from 0. */
  label: Uint8Array;
  /** Weight of each row: rows of one run share the weight of a run. */
  weight: Float64Array;
  /** Number of the run that a row comes from, for folds. */
  run: Int32Array;
}

/** Weights scaled so that every class counts the same and the mean weight is 1. */
export function balancedWeights(rows: Rows, classes: number): Float64Array {
  const totals = new Float64Array(classes);
  rows.label.forEach((label, i) => {
    totals[label] = totals[label]! + rows.weight[i]!;
  });
  const present = totals.filter((total) => total > 0).length;
  return rows.weight.map(
    (weight, i) => (weight * rows.label.length) / (present * totals[rows.label[i]!]!),
  );
}
