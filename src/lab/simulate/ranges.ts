import type { Random } from '../../core/index.js';

/** What one parameter is drawn from; plain data, so that other programs can draw it too. */
export type Range =
  | { draw: 'fixed'; value: number }
  | { draw: 'uniform' | 'log-uniform'; low: number; high: number }
  /** Whole numbers, both ends included. */
  | { draw: 'integer'; low: number; high: number }
  /** Each equally likely; named more often, met more often. */
  | { draw: 'pick'; of: readonly number[] };

export const fixed = (value: number): Range => ({ draw: 'fixed', value });
export const uniform = (low: number, high: number): Range => ({ draw: 'uniform', low, high });
export const logUniform = (low: number, high: number): Range => ({
  draw: 'log-uniform',
  low,
  high,
});
export const integer = (low: number, high: number): Range => ({ draw: 'integer', low, high });
export const pick = (...of: number[]): Range => ({ draw: 'pick', of });

/** One value of the range. */
export function drawFrom(random: Random, range: Range): number {
  switch (range.draw) {
    case 'fixed':
      return range.value;
    case 'uniform':
      return random.uniform(range.low, range.high);
    case 'log-uniform':
      return random.logUniform(range.low, range.high);
    case 'integer':
      return random.integer(range.low, range.high);
    case 'pick':
      return random.pick(range.of);
  }
}

/** One value of each range. */
export function drawAll<K extends string>(
  random: Random,
  ranges: Readonly<Record<K, Range>>,
): Record<K, number> {
  const out = {} as Record<K, number>;
  for (const key of Object.keys(ranges) as K[]) out[key] = drawFrom(random, ranges[key]);
  return out;
}
