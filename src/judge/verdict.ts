import type { ArcInterval, Mode, RunMode, Segment, Status } from '../core/index.js';
import { type Made, type Message, said } from '../messages/index.js';
import type { RemainingModes } from './remaining.js';

/** What one feature said. */
export interface Reason {
  feature: string;
  value: number | null;
  unit: string;
  speaksFor: Mode | null;
  /** Mean contribution to the score of the mode it speaks for, above the average of the modes. */
  weight: number;
  text: string;
  /** The sentence of `text` by its code and what it is made of. */
  code: Message['code'];
  params: Message['params'];
}

/** One answer for the run. */
export interface Verdict {
  status: Exclude<Status, 'failed'>;
  statusReason: string;
  statusReasonMessage: Message;
  mode: RunMode | null;
  confidence: number | null;
  probabilities: Record<Mode, number> | null;
  shareOfArcTime: Record<Mode | 'undetermined', number> | null;
  arcStretches: ArcInterval[];
  segments: Segment[];
  reasons: Reason[];
  /** The modes that remain where no single one is named by ear; null elsewhere. */
  remainingModes: RemainingModes | null;
  /** What would settle an open answer; null where nothing is open. */
  wouldSettle: string | null;
  wouldSettleMessage?: Message;
}

/** A verdict before it is said what follows from it. */
export type Judged = Omit<Verdict, 'status' | 'statusReason' | 'statusReasonMessage'>;

/** The reason of a verdict as its fields hold it. */
export function because(reason: Made): Pick<Verdict, 'statusReason' | 'statusReasonMessage'> {
  return { statusReason: reason.text, statusReasonMessage: said(reason) };
}
