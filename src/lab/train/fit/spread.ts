import { quantileOfSorted } from '../../../dsp/index.js';

/**
 * Centre and width of each feature over rows: median, and half the distance between the 16th and 84th
 * percentile (a standard deviation for a normal), floored so that a constant divides nothing by 0.
 */
export function centreAndWidth(values: readonly Float64Array[]): {
  centre: number[];
  deviation: number[];
} {
  const centre: number[] = [];
  const deviation: number[] = [];
  for (let f = 0; f < (values[0]?.length ?? 0); f++) {
    const column = Float64Array.from(values, (row) => row[f]!)
      .filter((value) => !Number.isNaN(value))
      .sort();
    const low = quantileOfSorted(column, 0.16);
    const high = quantileOfSorted(column, 0.84);
    centre.push(round(column.length > 0 ? quantileOfSorted(column, 0.5) : 0));
    deviation.push(round(Math.max(1e-3, (high - low) / 2 || 0)));
  }
  return { centre, deviation };
}

function round(value: number): number {
  return Number(value.toPrecision(6));
}
