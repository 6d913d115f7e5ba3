/** Counts of values in bins of equal width; `edges` has one more entry than `counts`. */
export interface Histogram {
  edges: Float64Array;
  counts: Float64Array;
  /** Values below the first and at or above the last edge, and values that are not numbers. */
  outside: number;
}

/**
 * Histogram with half-open bins `[edge, next)`, the last one closed as in NumPy. An empty input gives
 * zeros.
 * @throws RangeError when the bins are not at least one, or `high` is not above `low`.
 */
export function histogram(
  values: Float64Array,
  low: number,
  high: number,
  bins: number,
): Histogram {
  if (!(bins >= 1 && Number.isInteger(bins) && high > low))
    throw new RangeError(`histogram needs bins ≥ 1 and high > low, got ${bins}, ${low} to ${high}`);
  const counts = new Float64Array(bins);
  const width = (high - low) / bins;
  let outside = 0;
  for (let n = 0; n < values.length; n++) {
    const value = values[n]!;
    if (!(value >= low && value <= high)) {
      outside++;
      continue;
    }
    const bin = Math.min(bins - 1, Math.floor((value - low) / width));
    counts[bin] = counts[bin]! + 1;
  }
  const edges = Float64Array.from({ length: bins + 1 }, (_, k) => low + k * width);
  return { edges, counts, outside };
}
