import { mean as meanOf, quantileOfSorted } from '../../../dsp/index.js';

/** Fewest blocks from which a swing is told. */
const FEWEST = 15;
/** Share of the swing that one period must hold to be named. */
const CLEAR_SHARE = 0.5;

/**
 * Slow swing of a level: from the 5th to the 95th percentile of blocks of 0.2 s after their straight trend is taken
 * out, over their mean. Own choice. A sine of amplitude `a` gives 1.975 `a` over the mean. NaN with fewer than 15
 * blocks. `periodS` is the period that holds at least half of the variance, NaN where none does.
 */
export function blockTrend(
  blocks: readonly { timeS: number; value: number }[],
  blockS: number,
): { share: number; periodS: number } {
  const values = blocks.map((one) => one.value);
  if (values.length < FEWEST || !values.every(Number.isFinite))
    return { share: Number.NaN, periodS: Number.NaN };
  const mean = meanOf(values);
  const meanS = meanOf(blocks.map((one) => one.timeS));
  let product = 0;
  let square = 0;
  for (const { timeS, value } of blocks) {
    product += (timeS - meanS) * (value - mean);
    square += (timeS - meanS) ** 2;
  }
  const slope = product / square;
  const rest = blocks.map(({ timeS, value }) => value - mean - slope * (timeS - meanS));
  const sorted = Float64Array.from(rest).sort();
  const share = (quantileOfSorted(sorted, 0.95) - quantileOfSorted(sorted, 0.05)) / Math.abs(mean);
  return { share, periodS: period(rest, blockS) };
}

/** Period whose line holds most of the variance, taken with both neighbours, since it rarely meets a bin. */
function period(values: readonly number[], blockS: number): number {
  const count = Math.min(values.length, 1024);
  const powers: number[] = [0];
  for (let k = 1; k <= count / 2; k++) {
    let real = 0;
    let imaginary = 0;
    for (let n = 0; n < count; n++) {
      real += values[n]! * Math.cos((2 * Math.PI * k * n) / count);
      imaginary += values[n]! * Math.sin((2 * Math.PI * k * n) / count);
    }
    powers.push(real * real + imaginary * imaginary);
  }
  const total = powers.reduce((sum, one) => sum + one, 0);
  const top = powers.indexOf(Math.max(...powers));
  const around = (powers[top - 1] ?? 0) + powers[top]! + (powers[top + 1] ?? 0);
  return total > 0 && top > 1 && around >= CLEAR_SHARE * total
    ? (count * blockS) / top
    : Number.NaN;
}
