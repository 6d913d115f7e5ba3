import type { ArcInterval, Mode, RunMode, Segment, Status } from '../core/index.js';

/** What one feature said. */
export interface Reason {
  feature: string;
  value: number | null;
  unit: string;
  speaksFor: Mode | null;
  /** Mean contribution to the score of the mode it speaks for, above the average of the modes. */
  weight: number;
  text: string;
}

/** One answer for the run. */
export interface Verdict {
  status: Exclude<Status, 'failed'>;
  statusReason: string;
  mode: RunMode | null;
  confidence: number | null;
  probabilities: Record<Mode, number> | null;
  shareOfArcTime: Record<Mode | 'undetermined', number> | null;
  arcStretches: ArcInterval[];
  segments: Segment[];
  reasons: Reason[];
}
