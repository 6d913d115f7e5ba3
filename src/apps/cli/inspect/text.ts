import type { InspectedSeries, Inspection } from '../../../recording/index.js';
import { type Look, visibleWithin, wrap } from '../../view/index.js';

/** An inspection in words, for a terminal. */
export function inspectionText(given: Inspection, look: Look): string {
  const inspection = visibleWithin(given);
  const { paint } = look;
  const lines = [paint.bold(inspection.name), `  ${describe(inspection)}`];
  for (const series of inspection.series) lines.push('', ...seriesLines(series, look));
  if (inspection.problem !== null) {
    lines.push('', paint.bad('Cannot be read as it stands'));
    lines.push(...indented(inspection.problem.message, look));
  }
  if (inspection.notes.length > 0) {
    lines.push('', 'How it is read');
    for (const { message } of inspection.notes) lines.push(...indented(message, look, '- '));
  }
  lines.push('', 'To go on', `  ${paint.bold(inspection.command)}`);
  return `${lines.join('\n')}\n`;
}

function describe({ title, bytes, kind, sampleRateHz, samples, durationS }: Inspection): string {
  const parts = [title, size(bytes)];
  if (kind !== null && sampleRateHz !== null) {
    parts.push(`${kind}, ${round(sampleRateHz)} Hz`);
    if (durationS !== null) parts.push(`${round(durationS)} s (${samples} samples)`);
  }
  return parts.join(' · ');
}

function seriesLines(series: InspectedSeries, { paint }: Look): string[] {
  const unit = series.unit === undefined ? '' : ` [${series.unit}]`;
  const role =
    series.readAs === null ? paint.dim('left out') : paint.good(`read as ${series.readAs}`);
  const head = `  ${series.number}  ${paint.bold(series.name)}${unit}  ${role}`;
  const { figures } = series;
  if (figures === undefined) return [head, `     ${paint.dim('no numbers')}`];
  const missing = figures.missing > 0 ? `, ${figures.missing} without a number` : '';
  const first = figures.first.map(round).join('  ');
  return [
    head,
    `     ${figures.sketch}`,
    `     min ${round(figures.min)}  mean ${round(figures.mean)}  max ${round(figures.max)}  (${figures.count} values${missing})`,
    `     ${paint.dim(`first: ${first}`)}`,
  ];
}

function indented(text: string, look: Look, mark = ''): string[] {
  const lines = wrap(text, look.width - 2 - mark.length);
  return lines.map((line, i) => `  ${i === 0 ? mark : ' '.repeat(mark.length)}${line}`);
}

function round(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(6))) : '–';
}

function size(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  return bytes < 1e6 ? `${round(bytes / 1000)} kB` : `${round(Math.round(bytes / 1e4) / 100)} MB`;
}
