/** Mean trace around events, for a look at the typical short. */
export interface AverageTrace {
  /** Seconds from the event, one a sample; negative before it. */
  timeS: Float64Array;
  /** Mean of the trace there. */
  mean: Float64Array;
  /** Events averaged; those whose surroundings are cut off by the edge of the trace are left out. */
  count: number;
}

/**
 * Averages `values` around the sample numbers in `atSamples`, from `beforeS` before to `afterS` after each.
 * With no usable event the means are NaN and the count is 0.
 */
export function averageAround(
  values: Float64Array,
  atSamples: readonly number[],
  sampleRateHz: number,
  beforeS: number,
  afterS: number,
): AverageTrace {
  const before = Math.round(beforeS * sampleRateHz);
  const after = Math.round(afterS * sampleRateHz);
  const timeS = Float64Array.from(
    { length: before + after },
    (_, k) => (k - before) / sampleRateHz,
  );
  const mean = new Float64Array(before + after);
  let count = 0;
  for (const at of atSamples) {
    if (at - before < 0 || at + after > values.length) continue;
    for (let k = 0; k < mean.length; k++) mean[k] = mean[k]! + values[at - before + k]!;
    count++;
  }
  for (let k = 0; k < mean.length; k++) mean[k] = mean[k]! / count;
  return { timeS, mean, count };
}

/** The average short: trace around the start of each. */
export function averageShort(
  values: Float64Array,
  shorts: readonly { startSample: number }[],
  sampleRateHz: number,
  beforeS = 0.002,
  afterS = 0.006,
): AverageTrace {
  const starts = shorts.map((short) => short.startSample);
  return averageAround(values, starts, sampleRateHz, beforeS, afterS);
}
