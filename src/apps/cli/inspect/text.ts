import type { InspectedSeries, Inspection } from '../../../recording/index.js';
import { type Look, tell, type Words, wrap } from '../../view/index.js';

/** An inspection in words, for a terminal. */
export function inspectionText(inspection: Inspection, look: Look, words: Words): string {
  const { inspect } = words;
  const { paint } = look;
  const lines = [paint.bold(inspection.name), `  ${describe(inspection, words)}`];
  for (const series of inspection.series) lines.push('', ...seriesLines(series, look, words));
  if (inspection.problem !== null) {
    lines.push('', paint.bad(inspect.problem));
    lines.push(...indented(inspection.problem.message, look));
  }
  if (inspection.notes.length > 0) {
    lines.push('', inspect.howRead);
    for (const note of inspection.notes)
      lines.push(...indented(tell(note.message, note, words).text, look, '- '));
  }
  lines.push('', inspect.goOn, `  ${paint.bold(inspection.command)}`);
  return `${lines.join('\n')}\n`;
}

function describe(
  { title, bytes, kind, sampleRateHz, samples, durationS }: Inspection,
  words: Words,
): string {
  const { inspect } = words;
  const parts = [title, size(bytes, words)];
  if (kind !== null && sampleRateHz !== null) {
    parts.push(`${inspect.kinds[kind]}, ${round(sampleRateHz, words)} Hz`);
    if (durationS !== null) parts.push(inspect.length(round(durationS, words), samples));
  }
  return parts.join(' · ');
}

function seriesLines(series: InspectedSeries, { paint }: Look, words: Words): string[] {
  const { inspect } = words;
  const unit = series.unit === undefined ? '' : ` [${series.unit}]`;
  const role =
    series.readAs === null ? paint.dim(inspect.leftOut) : paint.good(inspect.readAs(series.readAs));
  const head = `  ${series.number}  ${paint.bold(series.name)}${unit}  ${role}`;
  const { figures } = series;
  if (figures === undefined) return [head, `     ${paint.dim(inspect.noNumbers)}`];
  const [min, mean, max] = [figures.min, figures.mean, figures.max].map((one) =>
    round(one, words),
  ) as [string, string, string];
  const first = figures.first.map((one) => round(one, words)).join('  ');
  return [
    head,
    `     ${figures.sketch}`,
    `     ${inspect.figures(min, mean, max, figures.count, figures.missing)}`,
    `     ${paint.dim(inspect.first(first))}`,
  ];
}

function indented(text: string, look: Look, mark = ''): string[] {
  const lines = wrap(text, look.width - 2 - mark.length);
  return lines.map((line, i) => `  ${i === 0 ? mark : ' '.repeat(mark.length)}${line}`);
}

function round(value: number | null, { numbers }: Words): string {
  return value !== null && Number.isFinite(value)
    ? numbers.decimal(String(Number(value.toPrecision(6))))
    : '–';
}

function size(bytes: number, words: Words): string {
  if (bytes < 1000) return words.inspect.bytes(bytes);
  return bytes < 1e6
    ? `${round(bytes / 1000, words)} kB`
    : `${round(Math.round(bytes / 1e4) / 100, words)} MB`;
}
