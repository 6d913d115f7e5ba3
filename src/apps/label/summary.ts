import { type BatchTally, MOST_REMARKS, type Remark } from '../../analysis/index.js';
import { MODES, type RunMode } from '../../core/index.js';
import { visible } from '../view/index.js';

/** The closing words of a batch: counts by status and mode, what failed, and what a person should hear. */
export function summaryText(tally: BatchTally): string {
  const { total, status, skipped } = tally;
  const lines = [
    `${total} ${total === 1 ? 'recording' : 'recordings'}: ${status.ok} with a mode, ${status['no-arc']} no arc, ${status.unsure} unsure, ${status.failed} failed`,
  ];
  const modes: RunMode[] = [...MODES, 'mixed'];
  const named = modes.filter((mode) => tally.mode[mode] > 0);
  if (named.length > 0)
    lines.push(`By mode: ${named.map((mode) => `${tally.mode[mode]} ${mode}`).join(', ')}`);
  if (skipped > 0) lines.push(`${skipped} in folders not a recording, passed over`);
  lines.push(...remarkLines('Failed', tally.failedRemarks, status.failed));
  lines.push(
    ...remarkLines('In doubt, for a person to listen to', tally.doubtfulRemarks, tally.doubtful),
  );
  return `${lines.map(visible).join('\n')}\n`;
}

function remarkLines(title: string, remarks: readonly Remark[], count: number): string[] {
  if (count === 0) return [];
  const lines = remarks.map(({ path, reason }) => `  ${path}: ${reason}`);
  const more = count - Math.min(count, MOST_REMARKS);
  if (more > 0) lines.push(`  … and ${more} more, see the table`);
  return [`${title} (${count}):`, ...lines];
}
