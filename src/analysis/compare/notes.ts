import type { Result } from '../result/index.js';

/** What has to be said beside a comparison. */
export function comparisonNotes(before: Result, after: Result): string[] {
  const notes = [
    '"More than chance" speaks of these two recordings. How much one weld differs from the next at the same settings they cannot show: record several of each.',
  ];
  if (before.source.kind !== after.source.kind) {
    notes.push('One is a sound recording and the other a trace: their figures are not compared.');
  }
  if (before.settings.fingerprint !== after.settings.fingerprint) {
    notes.push('The two were analysed with different settings.');
  }
  if (before.model?.fingerprint !== after.model?.fingerprint) {
    notes.push('The two were judged by different models.');
  }
  if (before.source.sampleRateHz !== after.source.sampleRateHz) {
    notes.push(
      `Sample rates differ (${before.source.sampleRateHz} and ${after.source.sampleRateHz} Hz): short events may be seen in one and missed in the other.`,
    );
  }
  if (before.source.sha256 !== null && before.source.sha256 === after.source.sha256) {
    notes.push('Both are the same file.');
  }
  for (const [name, result] of [
    ['before', before],
    ['after', after],
  ] as const) {
    if (result.status !== 'ok') notes.push(`${name}: ${result.status}. ${result.statusReason}`);
    const flags = result.quality.filter((flag) => flag.share >= 0.1);
    if (flags.length > 0) notes.push(`${name}: ${flags.map((flag) => flag.message).join(' ')}`);
  }
  return notes;
}
