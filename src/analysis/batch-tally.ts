import { MODES, type RunMode, type Status } from '../core/index.js';
import { doubtsOf } from './batch-doubts.js';
import type { Result } from './result/index.js';

/** An input with the reason why a person should look at it. */
export interface Remark {
  path: string;
  reason: string;
}

/** What a batch came to. `remarks` keep the first of each kind only; the counts count all. */
export interface BatchTally {
  total: number;
  status: Record<Status, number>;
  mode: Record<RunMode, number>;
  /** Files of a folder that are no recordings. */
  skipped: number;
  doubtful: number;
  doubtfulRemarks: Remark[];
  failedRemarks: Remark[];
}

/** Most remarks of a kind that are kept: a screenful, however long the batch. */
export const MOST_REMARKS = 20;

export function emptyTally(): BatchTally {
  return {
    total: 0,
    status: { ok: 0, 'no-arc': 0, unsure: 0, failed: 0 },
    mode: Object.fromEntries([...MODES, 'mixed'].map((one) => [one, 0])) as Record<RunMode, number>,
    skipped: 0,
    doubtful: 0,
    doubtfulRemarks: [],
    failedRemarks: [],
  };
}

/** Counts one result; null for a file of a folder that is no recording. */
export function countResult(tally: BatchTally, result: Result | null): void {
  if (result === null) {
    tally.skipped += 1;
    return;
  }
  tally.total += 1;
  tally.status[result.status] += 1;
  if (result.mode !== null) tally.mode[result.mode] += 1;
  const { path } = result.source;
  if (result.status === 'failed') keep(tally.failedRemarks, path, result.statusReason);
  const doubt = doubtsOf(result)[0];
  if (doubt || result.status === 'unsure') {
    tally.doubtful += 1;
    keep(tally.doubtfulRemarks, path, doubt?.reason ?? result.statusReason);
  }
}

function keep(remarks: Remark[], path: string, reason: string): void {
  if (remarks.length < MOST_REMARKS) remarks.push({ path, reason });
}
