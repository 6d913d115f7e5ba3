import type { Mode } from '../../core/index.js';
import type { SoundSign } from '../../messages/index.js';

/** Where a sign lies in arcs of one mode: 10th, 50th and 90th percentile, and the share of runs that show it. */
export interface UsualRange {
  low: number;
  middle: number;
  high: number;
  shown: number;
}

export type UsualSigns = Record<SoundSign, Record<Mode, UsualRange>>;
