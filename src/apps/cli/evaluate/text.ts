import type { Evaluation, Kappa } from '../../../lab/evaluate/index.js';
import {
  type Cell,
  count,
  number,
  sayInterval,
  share,
  tablesOf,
} from '../../../lab/evaluate/index.js';
import { type Look, plain, visibleWithin } from '../../view/index.js';

/** An evaluation for a terminal: what was compared, then one table after the other. */
export function evaluationText(given: Evaluation, look: Look): string {
  const evaluation = visibleWithin(given);
  const { bold } = look.paint;
  const parts = [summaryLines(evaluation).join('\n')];
  for (const { title, head, rows, note } of tablesOf(evaluation)) {
    const table = layOut([head, ...rows]);
    parts.push([bold(title), ...table, ...(note ? [note] : [])].join('\n'));
  }
  return `${parts.join('\n\n')}\n`;
}

/** Counts, the figures of all runs together, and how far people agree, each on a line of its own. */
export function summaryLines(evaluation: Evaluation): string[] {
  const { runs, answers, undecided, probabilities, rates, spans, agreement } = evaluation;
  const say = (name: string) => sayInterval(answers[name] ?? null, share);
  const lines = [
    `${runs.labelled} recordings: ${runs.scored} scored, ${runs.undecided} that people did not decide, ${runs.inPart} labelled in part only, ${runs.failed} could not be read`,
    `accuracy ${say('accuracy')}; of the answered ${say('accuracyOfAnswered')}; coverage ${say('coverage')}`,
    `macro recall ${say('macroRecall')}; macro F1 ${say('macroF1')} (labels never found count 0)`,
    `probabilities of ${probabilities.runs} runs of one mode: Brier ${sayInterval(probabilities.brier, number)}, log loss ${sayInterval(probabilities.logLoss, number)}${sayNone(probabilities.withoutOpinion)}`,
  ];
  if (probabilities.calibrationError)
    lines.push(`calibration error ${sayInterval(probabilities.calibrationError, number)}`);
  if (undecided.ambiguous > 0)
    lines.push(`ambiguous: ${undecided.ambiguous} runs, ${undecided.ambiguousNamed} got a mode`);
  if (undecided.either > 0)
    lines.push(
      `two modes stated: ${undecided.either} runs, ${undecided.eitherNamed} got a mode, ${undecided.eitherOneOfTwo} one of the two`,
    );
  if (rates)
    lines.push(
      `event rate: ${rates.found} of ${rates.stated} found, median error ${share(rates.medianError)}, nine of ten within ${share(rates.p90Error)}; within 2 %: ${share(rates.within2)}, within 10 %: ${share(rates.within10)} of all`,
    );
  if (spans)
    lines.push(
      `${count(spans.labelledS)} s labelled in parts: ${sayInterval(spans.figures['timeRight'] ?? null, share)} of the time right`,
    );
  if (agreement) lines.push(`labellers agree: ${sayKappa(agreement.fleiss)} (Fleiss)`);
  lines.push(
    'Intervals: 95 %, runs drawn again with replacement. Unsure and failed count as misses.',
  );
  return lines;
}

function sayNone(without: number): string {
  return without > 0 ? ` (${without} got none and count as no opinion)` : '';
}

export function sayKappa(kappa: Kappa | null): string {
  if (!kappa) return 'nothing was labelled twice';
  const value = kappa.kappa === null ? 'undefined (one label only)' : number(kappa.kappa);
  return `kappa ${value}, ${share(kappa.observed)} the same over ${kappa.units}`;
}

/** Columns as wide as their widest cell; those that hold figures stand to the right. */
function layOut(rows: readonly (readonly Cell[])[]): string[] {
  const texts = rows.map((row) => row.map((cell) => plain(cell === null ? '–' : String(cell))));
  const columns = texts[0]!.map((_, k) => texts.map((row) => row[k]!));
  const widths = columns.map((column) => Math.max(...column.map((text) => text.length)));
  const figures = columns.map((column) => column.slice(1).every((text) => /^[\d–-]/.test(text)));
  return texts.map((row) =>
    row
      .map((text, k) => (figures[k] ? text.padStart(widths[k]!) : text.padEnd(widths[k]!)))
      .join('  ')
      .trimEnd(),
  );
}
