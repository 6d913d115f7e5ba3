import { ArcError, didYouMean } from '../../../core/index.js';
import { parseLabel } from './vocabulary.js';

/** One judgement by one person: of a whole run, or of a part of it. */
export interface LabelRow {
  /** Line of the table, from 1, for messages. */
  line: number;
  file: string;
  /** In the one spelling of `parseLabel`. */
  label: string;
  /** In the time of the recording; null for the whole run. */
  span: { startS: number; endS: number } | null;
  eventRateHz: number | null;
  labeller: string;
  group: string;
}

/** What a table holds. */
export interface LabelTable {
  rows: LabelRow[];
  /** Rows with an empty label: nobody judged them. */
  empty: number;
  /** Columns that say nothing here. */
  unused: string[];
}

/** A table as text: its heading and its lines. */
export interface RawTable {
  name: string;
  heading: readonly string[];
  lines: readonly { line: number; cells: readonly string[] }[];
}

const COLUMNS = [
  'file',
  'mode',
  'label',
  'start_s',
  'end_s',
  'event_rate_hz',
  'labeller',
  'group',
  'offset_s',
  'clip',
];

/**
 * Reads the labels of a table with at least the columns `file` and `mode` (or `label`). `start_s` and
 * `end_s` are read in the time of the recording; with `offset_s`, the moment of the recording at which a
 * video starts, they are times of the video. Rows that name a `clip` keep the recording's times.
 *
 * @throws ArcError `bad-label-table`, `unknown-label`
 */
export function readLabelRows(table: RawTable): LabelTable {
  const names = table.heading.map((name) => name.trim().toLowerCase());
  const labelColumn = columnOfLabel(table.name, names);
  const rows: LabelRow[] = [];
  let empty = 0;
  for (const { line, cells } of table.lines) {
    const cell = (name: string): string => cells[names.indexOf(name)]?.trim() ?? '';
    const where = `${table.name}, line ${line}`;
    const label = parseLabel(cell(labelColumn), where);
    if (label === null) {
      empty++;
      continue;
    }
    const file = cell('file');
    if (file === '') throw bad(where, 'no file is named');
    const rate = numberIn(cell('event_rate_hz'), `${where}, event_rate_hz`);
    if (rate !== null && rate <= 0) throw bad(`${where}, event_rate_hz`, `it is ${rate}`);
    const span = spanOf(cell, where);
    const labeller = cell('labeller');
    rows.push({ line, file, label, span, eventRateHz: rate, labeller, group: cell('group') });
  }
  const unused = names.filter((name) => name !== '' && !COLUMNS.includes(name));
  return { rows, empty, unused };
}

function columnOfLabel(table: string, names: readonly string[]): string {
  const hint = (wanted: string): string =>
    names.map((name) => didYouMean(name, [wanted])).find((text) => text !== '') ?? '';
  if (!names.includes('file')) throw bad(table, `it has no column "file".${hint('file')}`);
  const found = ['mode', 'label'].filter((name) => names.includes(name));
  if (found.length === 2) throw bad(table, 'it has both a column "mode" and a column "label"');
  if (!found[0]) throw bad(table, `it has no column "mode" or "label".${hint('mode')}`);
  const twice = COLUMNS.find((name) => names.indexOf(name) !== names.lastIndexOf(name));
  if (twice) throw bad(table, `it has the column "${twice}" twice`);
  return found[0];
}

function spanOf(cell: (name: string) => string, where: string): LabelRow['span'] {
  const startS = numberIn(cell('start_s'), `${where}, start_s`);
  const endS = numberIn(cell('end_s'), `${where}, end_s`);
  const offset = numberIn(cell('offset_s'), `${where}, offset_s`) ?? 0;
  if (startS === null && endS === null) return null;
  if (startS === null || endS === null) throw bad(where, 'only one of start_s and end_s is given');
  const shift = cell('clip') === '' ? offset : 0;
  const span = { startS: startS + shift, endS: endS + shift };
  if (span.startS < 0) throw bad(where, `it starts at ${span.startS} s, before the recording`);
  if (span.endS <= span.startS) throw bad(where, `it ends at ${endS} s, not after ${startS} s`);
  return span;
}

/** A number with a point or, where the table is separated by other marks, a comma. */
function numberIn(text: string, where: string): number | null {
  if (text === '') return null;
  const value = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(text)
    ? Number(text.replace(',', '.'))
    : Number.NaN;
  if (!Number.isFinite(value)) throw bad(where, `"${text}" is not a number`);
  return value;
}

function bad(where: string, why: string): ArcError {
  return new ArcError({
    code: 'bad-label-table',
    what: `${where}: ${why}${why.endsWith('?') ? '' : '.'}`,
    expected: 'a table such as: file,mode,start_s,end_s,labeller,group',
    todo: 'Correct the table.',
  });
}
