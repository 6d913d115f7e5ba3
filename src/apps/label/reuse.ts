import { fileHash, fileKey, sameKey } from './file-key.js';
import type { Remembered } from './journal.js';
import type { LabelPlan, LabelTask } from './plan.js';

/** Errors that may not come again though the file is the same: such inputs are always tried again. */
export const PASSING: readonly string[] = [
  'file-not-found',
  'no-permission',
  'read-failed',
  'too-many-files',
  'file-shrank',
  'internal-error',
  'worker-died',
  'worker-lost',
  'took-too-long',
];

/**
 * Whether what an earlier run wrote down still holds: same file (unchanged by its key, or else by its
 * content), same settings, set-up, models and tool.
 */
export async function isReusable(
  earlier: Remembered | undefined,
  task: LabelTask,
  plan: LabelPlan,
): Promise<boolean> {
  if (!earlier?.key || earlier.fingerprint !== task.fingerprint) return false;
  if (plan.windows && !earlier.hasWindows) return false;
  if (earlier.status === 'skipped' && task.origin === 'named') return false;
  if (earlier.errorCode !== null && PASSING.includes(earlier.errorCode)) return false;
  const now = await fileKey(task.path);
  if (now === null || now.size !== earlier.key.size) return false;
  if (sameKey(now, earlier.key)) return true;
  return earlier.sha256 !== null && (await fileHash(task.path)) === earlier.sha256;
}
