import { ArcError } from '../../../core/index.js';
import type { LabelRow } from './label-rows.js';
import { AMBIGUOUS, isDecided } from './vocabulary.js';

/** A part of a run with the label that one person gave it. */
export interface LabelledSpan {
  startS: number;
  endS: number;
  label: string;
}

/** All that one person said of a run. */
export interface Labelling {
  labeller: string;
  /** Label of the whole run; null where only parts were labelled. */
  whole: string | null;
  /** In order of time, without overlap; empty where only the whole was labelled. */
  spans: LabelledSpan[];
}

/** A recording with everything that people said of it. */
export interface TruthRun {
  file: string;
  group: string;
  labellings: Labelling[];
  /** Mean of the rates that were stated. */
  eventRateHz: number | null;
}

/**
 * Gathers the rows of each file, in the order in which files first appear.
 * @throws ArcError `contradicting-labels` where one person labelled the same thing twice, or a file is in two groups
 */
export function truthRuns(rows: readonly LabelRow[]): TruthRun[] {
  const files = new Map<string, LabelRow[]>();
  for (const row of rows) files.set(row.file, [...(files.get(row.file) ?? []), row]);
  return [...files].map(([file, own]) => {
    const labellers = [...new Set(own.map((row) => row.labeller))];
    const rates = own.flatMap((row) => row.eventRateHz ?? []);
    return {
      file,
      group: groupOf(file, own),
      labellings: labellers.map((name) =>
        labellingOf(
          name,
          own.filter((row) => row.labeller === name),
        ),
      ),
      eventRateHz:
        rates.length > 0 ? rates.reduce((sum, one) => sum + one, 0) / rates.length : null,
    };
  });
}

function groupOf(file: string, rows: readonly LabelRow[]): string {
  const stated = rows.filter((row) => row.group !== '');
  const other = stated.find((row) => row.group !== stated[0]!.group);
  if (other)
    throw contradiction(
      `Lines ${stated[0]!.line} and ${other.line} put ${file} into the groups "${stated[0]!.group}" and "${other.group}".`,
    );
  return stated[0]?.group ?? '';
}

function labellingOf(labeller: string, rows: readonly LabelRow[]): Labelling {
  const wholes = rows.filter((row) => row.span === null);
  if (wholes[1])
    throw contradiction(
      `Lines ${wholes[0]!.line} and ${wholes[1].line} both label the whole of ${wholes[0]!.file}.`,
    );
  const parts = rows
    .flatMap((row) => (row.span ? [{ ...row.span, label: row.label, line: row.line }] : []))
    .sort((a, b) => a.startS - b.startS);
  parts.forEach((part, i) => {
    const before = parts[i - 1];
    if (before && part.startS < before.endS - 1e-9)
      throw contradiction(
        `Lines ${before.line} and ${part.line} label overlapping parts of ${rows[0]!.file}.`,
      );
  });
  const spans = parts.map(({ startS, endS, label }) => ({ startS, endS, label }));
  return { labeller, whole: wholes[0]?.label ?? null, spans };
}

/**
 * The label of a run from its parts: the one that holds `share` of the labelled arc time, `mixed` where
 * none does, `no-arc` where no part has an arc, `ambiguous` where too little of the time was decided.
 */
export function labelOfSpans(spans: readonly LabelledSpan[], share: number): string {
  const seconds = new Map<string, number>();
  for (const { startS, endS, label } of spans)
    seconds.set(label, (seconds.get(label) ?? 0) + endS - startS);
  if (seconds.size === 1) return spans[0]!.label;
  seconds.delete('no-arc');
  const total = [...seconds.values()].reduce((sum, one) => sum + one, 0);
  const [main, most] = [...seconds].reduce((a, b) => (b[1] > a[1] ? b : a));
  if (most >= share * total) return main;
  const decided = [...seconds].reduce((sum, [label, s]) => sum + (isDecided(label) ? s : 0), 0);
  return decided >= share * total ? 'mixed' : AMBIGUOUS;
}

/** The label that most people gave; `ambiguous` where no single one has the most votes. */
export function majority(labels: readonly string[]): string {
  const votes = new Map<string, number>();
  for (const label of labels) votes.set(label, (votes.get(label) ?? 0) + 1);
  const most = Math.max(...votes.values());
  const winners = [...votes].filter(([, count]) => count === most);
  return winners.length === 1 ? winners[0]![0] : AMBIGUOUS;
}

function contradiction(what: string): ArcError {
  return new ArcError({
    code: 'contradicting-labels',
    what,
    expected: 'one label by each labeller for a run or a part of it, and one group for a file',
    todo: 'Correct the table; name people in the column "labeller".',
  });
}
