/** The rhythm of the time stamps, judged from the first rows (in seconds, rising). */
export interface TimeBase {
  /**
   * `steady`: one row a step, gaps apart. `coarse`: steady, but the stamps are rounded to more than a
   * step. `uneven`: the rows have to be resampled.
   */
  kind: 'steady' | 'coarse' | 'uneven';
  rateHz: number;
  /** How far a stamp may lie from its place on the grid, in steps. */
  toleranceSteps: number;
  /** Spread of the steps for the note: smallest and largest usual step (5 % and 95 %), in seconds. */
  usualStepsS: [number, number];
}

/** Steps that differ from the usual one by less than this share are the same step. */
const STEADY = 0.25;
/** So many of all steps must be alike; the others may be gaps. */
const STEADY_SHARE = 0.98;

/**
 * Judges rising time stamps. Undefined with fewer than two different stamps.
 *
 * The rate of a steady base is the mean of the alike steps, so that stamps rounded to microseconds
 * still give 44,100 Hz; where the stamps leave doubt, the roundest number within it is taken. The rate
 * of an uneven base comes from the median step.
 *
 * @param factor turns the stamps into seconds
 */
export function judgeTimeBase(stamps: Float64Array, factor = 1): TimeBase | undefined {
  const base = judgeSteps(stamps, factor);
  return (
    base && { ...base, usualStepsS: [base.usualStepsS[0] * factor, base.usualStepsS[1] * factor] }
  );
}

function judgeSteps(stamps: Float64Array, factor: number): TimeBase | undefined {
  const steps = differences(stamps);
  const sorted = steps.slice().sort();
  const positive = sorted.filter((step) => step > 0);
  if (positive.length === 0) return undefined;
  const median = quantile(sorted, 0.5);
  const usualStepsS: [number, number] = [quantile(sorted, 0.05), quantile(sorted, 0.95)];
  if (median > 0) {
    const alike = steps.filter((step) => Math.abs(step - median) <= STEADY * median);
    if (alike.length >= STEADY_SHARE * steps.length) {
      const mean = alike.reduce((sum, step) => sum + step, 0) / alike.length;
      const doubt = (quantile(sorted, 0.99) - quantile(sorted, 0.01)) / (mean * alike.length);
      const rateHz = roundest(1 / (mean * factor), Math.max(doubt, stampDoubt(stamps, mean)));
      return { kind: 'steady', rateHz, toleranceSteps: 0.5, usualStepsS };
    }
  }
  const coarse = judgeCoarse(stamps, positive, usualStepsS, factor);
  if (coarse !== undefined) return coarse;
  const typical = median > 0 ? median : quantile(positive, 0.5);
  return { kind: 'uneven', rateHz: 1 / (typical * factor), toleranceSteps: 0, usualStepsS };
}

/** Stamps on a lattice wider than the true step, such as milliseconds at 10 kHz. */
function judgeCoarse(
  stamps: Float64Array,
  positive: Float64Array,
  usualStepsS: [number, number],
  factor: number,
): TimeBase | undefined {
  const lattice = positive[0] as number;
  const onLattice = positive.filter((step) => {
    const ratio = step / lattice;
    return Math.abs(ratio - Math.round(ratio)) < 0.02;
  });
  if (onLattice.length < 0.99 * positive.length) return undefined;
  const { step, worst } = fitLine(stamps);
  if (!(step > 0) || lattice < STEADY * step || worst > 1.1 * lattice + 0.1 * step)
    return undefined;
  const rateHz = roundest(1 / (step * factor), lattice / (step * stamps.length));
  return { kind: 'coarse', rateHz, toleranceSteps: 1.5 * (lattice / step) + 0.5, usualStepsS };
}

/** Least-squares line through stamp against row; `worst` is the largest distance from it, seconds. */
function fitLine(stamps: Float64Array): { step: number; worst: number } {
  const n = stamps.length;
  const first = stamps[0] ?? 0;
  const middle = (n - 1) / 2;
  let sum = 0;
  let product = 0;
  for (let i = 0; i < n; i++) {
    const t = (stamps[i] ?? 0) - first;
    sum += t;
    product += (i - middle) * t;
  }
  const step = product / ((n * (n * n - 1)) / 12);
  let worst = 0;
  for (let i = 0; i < n; i++) {
    const line = sum / n + (i - middle) * step;
    worst = Math.max(worst, Math.abs((stamps[i] ?? 0) - first - line));
  }
  return { step, worst };
}

/** Relative doubt that a float64 of this size leaves in a step averaged over all rows. */
function stampDoubt(stamps: Float64Array, step: number): number {
  const size = Math.max(Math.abs(stamps[0] ?? 0), Math.abs(stamps.at(-1) ?? 0));
  return (4 * size * Number.EPSILON) / (step * stamps.length) + 1e-12;
}

/** The roundest rate within the relative doubt, down to a tenth of a hertz; else the rate as it is. */
function roundest(rateHz: number, doubt: number): number {
  const allowed = Math.min(doubt, 0.01) * rateHz;
  for (const perUnit of [1e-3, 1e-2, 0.1, 1, 10]) {
    const round = Math.round(rateHz * perUnit) / perUnit;
    if (round > 0 && Math.abs(rateHz - round) <= allowed) return round;
  }
  return rateHz;
}

function differences(values: Float64Array): Float64Array {
  const steps = new Float64Array(Math.max(0, values.length - 1));
  for (let i = 0; i < steps.length; i++) steps[i] = (values[i + 1] ?? 0) - (values[i] ?? 0);
  return steps;
}

function quantile(sorted: Float64Array, share: number): number {
  return sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
}
