import type { Result } from '../../analysis/result/index.js';
import { MODES, type Status } from '../../core/index.js';
import type { FileKey } from './file-key.js';

/** The judgement of one window alone, for tables finer than segments. */
export interface WindowRecord {
  startS: number;
  endS: number;
  arcOn: boolean;
  /** In the order of the modes. */
  probabilities: number[];
  /** About 1 for what the model knows; the larger, the less it looks like anything known. */
  novelty: number;
}

/** One line of the journal: all that tables, clips and the decision to label again need. */
export interface LabelRecord {
  path: string;
  fingerprint: string;
  /** The file as it was before it was read; null when it could not be asked. */
  key: FileKey | null;
  /** Null for a file of a folder that is no recording. */
  result: Result | null;
  windows?: WindowRecord[];
}

/** A record as it travels, so that it is turned to text only once. */
export interface LabelOutcome {
  /** JSON without line breaks. */
  line: string;
  status: Status | 'skipped';
  errorCode: string | null;
}

export function toOutcome(record: LabelRecord): LabelOutcome {
  const { result } = record;
  return {
    line: JSON.stringify(record),
    status: result?.status ?? 'skipped',
    errorCode: result?.error?.code ?? null,
  };
}

/** The mode with the largest probability, the earlier one of equals. */
export function likeliest(window: WindowRecord): string | null {
  const best = Math.max(...window.probabilities);
  return MODES[window.probabilities.indexOf(best)] ?? null;
}
