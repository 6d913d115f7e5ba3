import type { Random } from '../../../core/index.js';
import { quantile } from '../../../dsp/index.js';

/** A figure with its interval. */
export interface Interval {
  value: number;
  low: number;
  high: number;
}

interface BootstrapOptions {
  draws?: number;
  level?: number;
}

/**
 * Percentile bootstrap over whole runs (Efron & Tibshirani, ch. 13): runs are drawn again with
 * replacement, so that windows of one run never count as independent. Null where the figure is
 * undefined on all runs together.
 */
export function bootstrap<T>(
  runs: readonly T[],
  figure: (runs: readonly T[]) => number | null,
  random: Random,
  options: BootstrapOptions = {},
): Interval | null {
  return bootstrapAll(runs, (drawn) => ({ figure: figure(drawn) }), random, options).figure;
}

/** {@link bootstrap} of several figures at once, all from the same draws. */
export function bootstrapAll<T, K extends string>(
  runs: readonly T[],
  figures: (runs: readonly T[]) => Record<K, number | null>,
  random: Random,
  options: BootstrapOptions = {},
): Record<K, Interval | null> {
  const { draws = 1000, level = 0.95 } = options;
  const values = figures(runs);
  const names = Object.keys(values) as K[];
  const drawn = new Map<K, number[]>(names.map((name) => [name, []]));
  const wanted = names.some((name) => values[name] !== null);
  for (let i = 0; i < draws && wanted; i++) {
    const again = runs.map(() => runs[random.integer(0, runs.length - 1)]!);
    const found = figures(again);
    for (const name of names) if (found[name] !== null) drawn.get(name)!.push(found[name]);
  }
  const intervalOf = (name: K): Interval | null => {
    const value = values[name];
    if (value === null) return null;
    const all = drawn.get(name)!;
    return { value, low: quantile(all, (1 - level) / 2), high: quantile(all, (1 + level) / 2) };
  };
  return Object.fromEntries(names.map((name) => [name, intervalOf(name)])) as Record<
    K,
    Interval | null
  >;
}
