import type { Mode } from '../../core/index.js';
import { type ConditionName, type Made, message } from '../../messages/index.js';

/** In plain words: nothing to do, keep an eye on it, act on it. */
export type Rating = 'good' | 'watch' | 'bad';

/** One thing looked at in a run: its figure, how that is rated, and what is usual with the source of it. */
export interface Finding {
  name: ConditionName;
  rating: Rating;
  /** The figure that was rated. */
  value: number;
  /** `1` for a pure number or a share. */
  unit: string;
  text: Made;
  usual: Made;
}

/** Good up to the first limit, to be watched up to the second, both included. */
export function rateUpTo(value: number, good: number, watch: number): Rating {
  if (value <= good) return 'good';
  return value <= watch ? 'watch' : 'bad';
}

export function usual(of: ConditionName, mode: Mode | null = null): Made {
  return message('condition-usual', { of, mode });
}
