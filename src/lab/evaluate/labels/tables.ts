import type { Interval } from '../score/bootstrap.js';
import type { Evaluation } from './evaluation.js';
import { isDecided } from './vocabulary.js';

/** What stands in a cell; null where there is nothing to say. */
export type Cell = string | number | null;

/** One table, ready for a terminal or a page. */
export interface Table {
  title: string;
  head: Cell[];
  rows: Cell[][];
  note?: string;
}

/** All tables of an evaluation, those without rows left out. */
export function tablesOf(evaluation: Evaluation): Table[] {
  const tables = [
    confusionTable(evaluation),
    labelTable(evaluation),
    reliabilityTable(evaluation),
    spanTable(evaluation),
    groupTable(evaluation),
    agreementTable(evaluation),
    wrongTable(evaluation),
  ];
  return tables.filter((table) => table.rows.length > 0);
}

function confusionTable({ confusion }: Evaluation): Table {
  const { truths, answers, counts } = confusion;
  const sums = answers.map((_, k) => counts.reduce((sum, row) => sum + row[k]!, 0));
  const shown = answers.flatMap((answer, k) =>
    sums[k]! > 0 || truths.includes(answer) ? [k] : [],
  );
  const rows = truths.flatMap((truth, i) => {
    const row = counts[i]!;
    return row.some((one) => one > 0) ? [[truth, ...shown.map((k) => row[k]!)]] : [];
  });
  return {
    title: 'Truth by answer',
    head: ['truth', ...shown.map((k) => answers[k]!)],
    rows,
  };
}

function labelTable({ support, answers }: Evaluation): Table {
  const rows = support.flatMap(({ label, runs }): Cell[][] => {
    const recall = answers[`recall ${label}`] ?? null;
    const precision = answers[`precision ${label}`] ?? null;
    if (runs === 0 && precision === null) return [];
    return [[label, runs, sayInterval(recall, share), sayInterval(precision, share)]];
  });
  return { title: 'Labels', head: ['label', 'runs', 'recall', 'precision'], rows };
}

function reliabilityTable({ probabilities }: Evaluation): Table {
  const rows = probabilities.reliability
    .filter((bin) => bin.count > 0)
    .map((bin): Cell[] => [
      `${share(bin.from)} to ${share(bin.to)}`,
      bin.count,
      share(bin.confidence),
      share(bin.accuracy),
    ]);
  const note = 'A bin of a few runs says little.';
  return {
    title: 'Reliability of the likeliest mode',
    head: ['confidence', 'runs', 'said', 'right'],
    rows,
    note,
  };
}

function spanTable({ spans }: Evaluation): Table {
  const head = ['', 'labelled', 'found', 'matched', 'recall', 'precision', 'F1'];
  const title = 'Parts of runs';
  if (!spans) return { title, head, rows: [] };
  const row = (name: string, key: 'segments' | 'changes', stem: string): Cell[] => [
    name,
    spans[key].truths,
    spans[key].founds,
    spans[key].matches,
    ...['Recall', 'Precision', 'F1'].map((figure) =>
      sayInterval(spans.figures[`${stem}${figure}`] ?? null, share),
    ),
  ];
  return {
    title,
    head,
    rows: [
      row('segments (half of the joint time)', 'segments', 'segment'),
      row('changes (within 0.5 s)', 'changes', 'change'),
    ],
  };
}

function groupTable({ groups }: Evaluation): Table {
  return {
    title: 'Groups',
    head: ['group', 'runs', 'accuracy', 'coverage', 'of the answered', 'macro recall'],
    rows: groups.map((one) => [
      one.group || '(none)',
      one.runs,
      share(one.accuracy),
      share(one.coverage),
      share(one.accuracyOfAnswered),
      share(one.macroRecall),
    ]),
  };
}

function agreementTable({ agreement }: Evaluation): Table {
  const rows = (agreement?.pairs ?? []).map(({ first, second, cohen }): Cell[] => [
    `${first || '(unnamed)'} and ${second || '(unnamed)'}`,
    cohen?.units ?? 0,
    share(cohen?.observed ?? null),
    number(cohen?.kappa ?? null),
  ]);
  return {
    title: 'People against each other',
    head: ['labellers', 'judged by both', 'the same', "Cohen's kappa"],
    rows,
  };
}

function wrongTable({ files }: Evaluation): Table {
  const rows = files
    .filter(({ truth, answer }) => truth !== null && isDecided(truth) && truth !== answer)
    .map((one): Cell[] => [
      one.file,
      one.truth,
      one.answer,
      share(one.confidence),
      one.error ?? '',
    ]);
  return {
    title: 'Answers that are not the truth',
    head: ['file', 'truth', 'answer', 'confidence', 'why'],
    rows,
  };
}

/** `92 %`, one digit below ten; `–` for none. */
export function share(value: number | null): string {
  if (value === null) return '–';
  const percent = 100 * value;
  return `${percent < 10 && percent > 0 ? percent.toFixed(1) : percent.toFixed(0)} %`;
}

export function number(value: number | null): string {
  return value === null ? '–' : value.toFixed(3);
}

export function count(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toFixed(1);
}

/** `92 % (85 to 97 %)`. */
export function sayInterval(
  interval: Interval | null,
  say: (value: number | null) => string,
): string {
  if (!interval) return '–';
  return `${say(interval.value)} (${say(interval.low).replace(/ %$/, '')} to ${say(interval.high)})`;
}
