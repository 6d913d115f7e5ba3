import type { Result } from '../../analysis/result/index.js';
import type { Evidence, Placement } from '../view/evidence/index.js';

/** Everything a page says about one run. Without evidence (a failed input) there are words only. */
export interface RunView {
  result: Result;
  evidence: Evidence | null;
  placement: Placement | null;
  /** What the model was fitted on and what was measured of it; empty when no model was used. */
  modelCard: Record<string, unknown>;
}

/** Words and segments that a picture over time needs beside the evidence. */
export type TimeRun = Pick<Result, 'arcStretches' | 'segments'> & { evidence: Evidence };

export interface TimeWindow {
  fromS: number;
  toS: number;
}
