/** Mean, spread, skewness and excess kurtosis. */
export interface Moments {
  count: number;
  mean: number;
  sd: number;
  /** NaN where the spread is nil. */
  skewness: number;
  kurtosis: number;
}

/** Moments of the values whose `skip` byte is 0, over several arrays. All NaN when nothing is left. */
export function momentsOf(parts: readonly Float64Array[], skips?: readonly Uint8Array[]): Moments {
  let count = 0;
  let sum = 0;
  for (let p = 0; p < parts.length; p++) {
    const values = parts[p]!;
    const skip = skips?.[p];
    for (let n = 0; n < values.length; n++) {
      if (skip && skip[n] === 1) continue;
      sum += values[n]!;
      count++;
    }
  }
  const mean = sum / count;
  let [m2, m3, m4] = [0, 0, 0];
  for (let p = 0; p < parts.length; p++) {
    const values = parts[p]!;
    const skip = skips?.[p];
    for (let n = 0; n < values.length; n++) {
      if (skip && skip[n] === 1) continue;
      const d = values[n]! - mean;
      const d2 = d * d;
      m2 += d2;
      m3 += d2 * d;
      m4 += d2 * d2;
    }
  }
  const variance = m2 / count;
  const flat = !(variance > 1e-18);
  return {
    count,
    mean,
    sd: Math.sqrt(variance),
    skewness: flat ? Number.NaN : m3 / count / variance ** 1.5,
    kurtosis: flat ? Number.NaN : m4 / count / (variance * variance) - 3,
  };
}

/** Standard deviation of the means of groups of `group` values: what wanders slower than that. */
export function slowSpread(parts: readonly Float64Array[], group: number): number {
  const means: number[] = [];
  for (const values of parts)
    for (let from = 0; from + group <= values.length; from += group) {
      let sum = 0;
      for (let n = from; n < from + group; n++) sum += values[n]!;
      means.push(sum / group);
    }
  return momentsOf([Float64Array.from(means)]).sd;
}
