import { type Dialect, readCell, splitCells } from './cells.js';
import { isDate, readClock } from './clock.js';

/** `n` number, `c` clock text, `d` date, `e` empty or a word for no value, `x` text. */
export type CellKind = 'n' | 'c' | 'd' | 'e' | 'x';

/** How the table is written and where it starts. */
export interface TableShape {
  dialect: Dialect;
  columns: number;
  /** Most frequent kind of each column. */
  kinds: CellKind[];
  /** Index (among the lines given) of the first row of numbers. */
  firstRow: number;
}

const DIALECTS: readonly Dialect[] = [
  { delimiter: '\t', decimal: '.' },
  { delimiter: '\t', decimal: ',' },
  { delimiter: ';', decimal: ',' },
  { delimiter: ';', decimal: '.' },
  { delimiter: ',', decimal: '.' },
  // Only quoted cells can be read so.
  { delimiter: ',', decimal: ',' },
  { delimiter: '|', decimal: '.' },
  { delimiter: ' ', decimal: '.' },
  { delimiter: ' ', decimal: ',' },
];
/** Lines looked at for the dialect: the last ones, where the numbers surely are. */
const SAMPLE = 60;

interface Fit extends Omit<TableShape, 'firstRow'> {
  score: number;
}

/** Finds how a text table is written; undefined where the text holds no table of numbers. */
export function detectShape(lines: readonly string[]): TableShape | undefined {
  const sample = lines.filter((line) => line.trim() !== '').slice(-SAMPLE);
  let best: Fit | undefined;
  for (const dialect of DIALECTS) {
    const fit = fitDialect(sample, dialect);
    if (fit !== undefined && (best === undefined || fit.score > best.score + 1e-9)) best = fit;
  }
  if (best === undefined) return undefined;
  const shape = best;
  const firstRow = lines.findIndex((line, i) => {
    if (!isTableRow(line, shape)) return false;
    // A lone line that looks like a row belongs to the remarks above the table.
    const next = lines.slice(i + 1, i + 6).filter((text) => text.trim() !== '');
    return next.length === 0 || next.some((text) => isTableRow(text, shape));
  });
  if (firstRow < 0) return undefined;
  const { dialect, columns, kinds } = shape;
  return { dialect, columns, kinds, firstRow };
}

/** The kind of each cell of a line. */
export function cellKinds(line: string, dialect: Dialect): CellKind[] {
  return splitCells(line, dialect.delimiter).map((cell) => kindOf(cell, dialect.decimal).kind);
}

function kindOf(cell: string, decimal: '.' | ','): { kind: CellKind; odd?: true } {
  const read = readCell(cell, decimal);
  if (read.kind === 'number') {
    // `001` beside another cell hints at a decimal comma cut in two; a grouped number at a wrong one.
    const odd = read.grouped === true || /^[+-]?0\d/.test(cell);
    return odd ? { kind: 'n', odd } : { kind: 'n' };
  }
  if (read.kind === 'missing') return { kind: 'e' };
  if (isDate(cell)) return { kind: 'd' };
  return { kind: readClock(cell) === undefined ? 'x' : 'c' };
}

function fitDialect(sample: readonly string[], dialect: Dialect): Fit | undefined {
  const rows = sample.map((line) =>
    splitCells(line, dialect.delimiter).map((cell) => kindOf(cell, dialect.decimal)),
  );
  const columns = mode(
    rows.filter((row) => row.some(({ kind }) => 'nc'.includes(kind))).map((r) => r.length),
  );
  if (columns === undefined) return undefined;
  // Header lines have the right number of cells too, but must not have a say in what columns hold.
  const fitting = rows.filter(
    (row) => row.length === columns && row.some(({ kind }) => 'nc'.includes(kind)),
  );
  const kinds = Array.from({ length: columns }, (_, c) =>
    majorityKind(fitting.map((row) => row[c]?.kind ?? 'e')),
  );
  const numeric = kinds.filter((kind) => kind === 'n' || kind === 'c').length;
  if (numeric === 0) return undefined;
  const shape = { dialect, columns, kinds };
  const good = sample.filter((line) => isTableRow(line, shape)).length;
  if (good === 0) return undefined;
  const odd = fitting.flat().filter((cell) => cell.odd).length / (fitting.length * columns);
  const score =
    (good / sample.length) * (numeric / columns) - 0.3 * odd + 0.001 * Math.min(columns, 20);
  return { ...shape, score };
}

function majorityKind(kinds: readonly CellKind[]): CellKind {
  return mode(kinds.filter((kind) => kind !== 'e')) ?? 'e';
}

/** A row of the table: right number of cells, numbers where numbers belong, at least one of them. */
export function isTableRow(line: string, shape: Omit<TableShape, 'firstRow'>): boolean {
  const kinds = cellKinds(line, shape.dialect);
  if (kinds.length !== shape.columns) return false;
  let numbers = 0;
  for (let c = 0; c < kinds.length; c++) {
    const expected = shape.kinds[c];
    if (expected !== 'n' && expected !== 'c') continue;
    if (kinds[c] === expected) numbers++;
    else if (kinds[c] !== 'e') return false;
  }
  return numbers > 0;
}

function mode<T>(values: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best: T | undefined;
  for (const [value, count] of counts) {
    if (best === undefined || count > (counts.get(best) ?? 0)) best = value;
  }
  return best;
}
