import type { Mode } from '../../../core/index.js';
import type { Made } from '../../../messages/index.js';
import type { Answered } from '../answers.js';
import type { Context } from '../context.js';

/** What every explanation gets to look at. */
export interface Diagnosis {
  c: Context;
  settings: Answered;
  intended: Answered | null;
  /** Something to explain: an answer is not "agrees", and something was stated. */
  trouble: boolean;
  /** Mode seen most; null where none is named. */
  seen: Mode | null;
  wanted: Mode | null;
}

/** An explanation found to bear on this case. */
export interface Finding {
  /**
   * How well it fits, 0 to 1, by reasoned rules and not by a fit to data; only the order is shown.
   * About 0.9: measured directly; 0.7: follows from what is known; 0.4: possible, to be checked.
   */
  weight: number;
  what: Made;
  evidenceFor: Made[];
  evidenceAgainst: Made[];
  /** What a person can look at. Never a change of a setting. */
  check: Made;
}

/** One explanation: a stable id, and when it applies. */
export interface ExplanationRule {
  id: string;
  judge: (d: Diagnosis) => Finding | null;
}

/** Drops the empty lines of a list of evidence. */
export const lines = (...parts: (Made | null | undefined | false)[]): Made[] =>
  parts.filter((part): part is Made => typeof part === 'object' && part !== null);
