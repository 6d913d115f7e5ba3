import type { Range } from '../sourced.js';

/** A value with its uncertainty, taken as normal: mean and standard deviation in the unit of the value. */
export interface Likely {
  mean: number;
  sd: number;
}

export const likely = (mean: number, sd: number): Likely => ({ mean, sd });

/** Sum of independent values. */
export const plus = (...parts: readonly Likely[]): Likely => ({
  mean: parts.reduce((sum, one) => sum + one.mean, 0),
  sd: Math.hypot(...parts.map((one) => one.sd)),
});

export const minus = (a: Likely, b: Likely): Likely => plus(a, { mean: -b.mean, sd: b.sd });

/** Mean ± 2 standard deviations: nineteen of twenty cases. */
export const widely = ({ mean, sd }: Likely): Range => ({ min: mean - 2 * sd, max: mean + 2 * sd });

/** Mean ± 1 standard deviation: two of three cases. */
export const usually = ({ mean, sd }: Likely): Range => ({ min: mean - sd, max: mean + sd });

/** A range of which nineteen of twenty cases are meant. */
export const fromRange = ({ min, max }: Range): Likely => likely((min + max) / 2, (max - min) / 4);

/**
 * Share of a standard normal distribution below `z`, by the error-function approximation 7.1.26 of
 * Abramowitz & Stegun, Handbook of Mathematical Functions (absolute error below 1.5e-7).
 */
export function normalShare(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const poly =
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) * t;
  const tail = (poly * Math.exp(-x * x)) / 2;
  return z < 0 ? tail : 1 - tail;
}

/** Share of cases in which the value lies above a limit. */
export const above = (value: number, limit: Likely): number =>
  normalShare((value - limit.mean) / limit.sd);

/**
 * Nodes and weights for the mean of a function over a normal distribution: Gauss–Hermite with five
 * points (Abramowitz & Stegun, table 25.10, scaled by √2 and 1/√π), exact for polynomials up to the
 * ninth degree.
 */
export const NORMAL_NODES: readonly (readonly [z: number, weight: number])[] = [
  [-2.8569700138728, 0.0112574113277207],
  [-1.355626179974266, 0.2220759220056126],
  [0, 0.5333333333333333],
  [1.355626179974266, 0.2220759220056126],
  [2.8569700138728, 0.0112574113277207],
];
