/** Feature values as small bin numbers, for histogram boosting. The last bin holds the absent ones. */
export interface BinnedFeatures {
  /** Upper edges of the bins of each feature, ascending; a value goes to the first edge not below it. */
  edges: Float64Array[];
  /** Bin of each row, one array a feature. */
  bins: Uint8Array[];
}

export const BIN_LIMIT = 64;
/** Bin of absent values. */
export const ABSENT_BIN = BIN_LIMIT;

/** Cuts every feature at its quantiles into at most {@link BIN_LIMIT} bins. */
export function binFeatures(values: readonly Float64Array[]): BinnedFeatures {
  const features = values[0]?.length ?? 0;
  const edges: Float64Array[] = [];
  const bins: Uint8Array[] = [];
  for (let f = 0; f < features; f++) {
    const column = Float64Array.from(values, (row) => row[f]!);
    const cuts = quantileCuts(column);
    edges.push(cuts);
    bins.push(Uint8Array.from(column, (value) => binOf(value, cuts)));
  }
  return { edges, bins };
}

function quantileCuts(column: Float64Array): Float64Array {
  const present = column.filter((value) => !Number.isNaN(value)).sort();
  const cuts: number[] = [];
  for (let b = 1; b < BIN_LIMIT && present.length > 0; b++) {
    let i = Math.max(1, Math.floor((b * present.length) / BIN_LIMIT));
    while (i < present.length && present[i] === present[i - 1]) i++;
    if (i >= present.length) break;
    // Half way between unlike neighbours, so that a rounding difference moves no training row.
    const cut = (present[i - 1]! + present[i]!) / 2;
    if (cuts.length === 0 || cut > cuts.at(-1)!) cuts.push(cut);
  }
  return Float64Array.from(cuts);
}

function binOf(value: number, cuts: Float64Array): number {
  if (Number.isNaN(value)) return ABSENT_BIN;
  let low = 0;
  let high = cuts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (value <= cuts[middle]!) high = middle;
    else low = middle + 1;
  }
  return low;
}
