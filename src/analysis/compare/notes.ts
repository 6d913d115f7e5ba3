import { again, type Made, message } from '../../messages/index.js';
import type { Result } from '../result/index.js';

/** What has to be said beside a comparison. */
export function comparisonNotes(before: Result, after: Result): Made[] {
  const notes = [message('compare-within-runs')];
  if (before.source.kind !== after.source.kind) notes.push(message('compare-kinds-differ'));
  if (before.settings.fingerprint !== after.settings.fingerprint) {
    notes.push(message('compare-settings-differ'));
  }
  if (before.model?.fingerprint !== after.model?.fingerprint) {
    notes.push(message('compare-models-differ'));
  }
  const [beforeHz, afterHz] = [before.source.sampleRateHz, after.source.sampleRateHz];
  if (beforeHz !== afterHz) notes.push(message('compare-rates-differ', { beforeHz, afterHz }));
  if (before.source.sha256 !== null && before.source.sha256 === after.source.sha256) {
    notes.push(message('compare-same-file'));
  }
  for (const [run, result] of [
    ['before', before],
    ['after', after],
  ] as const) {
    const { status, statusReason, statusReasonMessage } = result;
    if (status !== 'ok') {
      const reason = again({ ...statusReasonMessage, message: statusReason });
      notes.push(message('compare-not-ok', { run, status, reason }));
    }
    const doubts = result.quality.filter((flag) => flag.share >= 0.1).map(again);
    if (doubts.length > 0) notes.push(message('compare-doubts', { run, doubts }));
  }
  return notes;
}
