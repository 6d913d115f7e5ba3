/** Mean; NaN for an empty array. */
export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

/** Population standard deviation; NaN for an empty array, 0 for a constant. */
export function standardDeviation(values: ArrayLike<number>): number {
  const centre = mean(values);
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i]! - centre) ** 2;
  return Math.sqrt(sum / values.length);
}

/** Standard deviation over mean, NaN for an empty array or a mean of 0. */
export function coefficientOfVariation(values: ArrayLike<number>): number {
  const centre = mean(values);
  return centre === 0 ? Number.NaN : standardDeviation(values) / centre;
}

/**
 * Quantile by linear interpolation between order statistics (Hyndman & Fan type 7, NumPy's default).
 * NaN for an empty array. The input is left as it is.
 */
export function quantile(values: ArrayLike<number>, fraction: number): number {
  return quantileOfSorted(Float64Array.from(values).sort(), fraction);
}

/** {@link quantile} of values already in ascending order. */
export function quantileOfSorted(sorted: Float64Array, fraction: number): number {
  if (sorted.length === 0) return Number.NaN;
  const position = (sorted.length - 1) * Math.min(1, Math.max(0, fraction));
  const below = Math.floor(position);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (high - low) * (position - below);
}

/** Median; NaN for an empty array. */
export function median(values: ArrayLike<number>): number {
  return quantile(values, 0.5);
}

/** Median absolute deviation from the median, unscaled; NaN for an empty array. */
export function medianAbsoluteDeviation(values: ArrayLike<number>): number {
  const centre = median(values);
  return median(Float64Array.from(values, (value) => Math.abs(value - centre)));
}
