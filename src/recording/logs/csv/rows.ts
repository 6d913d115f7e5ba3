import { ArcError, type Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { RowChunk } from '../table.js';
import { readCell, splitCells } from './cells.js';
import { readClock } from './clock.js';
import { decode } from './encoding.js';
import { linePieces } from './feed.js';
import type { CsvLayout } from './layout.js';
import { RowParser } from './row-parser.js';

const CHUNK_ROWS = 16384;
/** More lines of text between the numbers than this are no remarks but damage. */
const MAX_TEXT_LINES = 1000;

/** What happened to the lines that the fast parser did not understand. */
interface OddLines {
  text: number;
  firstLine: number;
  firstText: string;
  grouped: number;
}

/**
 * Reads the wanted columns in chunks. Lines that hold no number in any wanted column but text (a
 * repeated header, a remark) are skipped with a note; a line with a broken value ends the reading.
 *
 * @throws ArcError `bad-log-line` (file, line and text), `too-many-text-lines`.
 */
export async function* readRows(
  layout: CsvLayout,
  wanted: readonly number[],
  notes: Note[],
): AsyncGenerator<RowChunk> {
  const { shape, source, encoding } = layout;
  const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0));
  const parser = new RowParser(
    shape.dialect,
    order.map((i) => wanted[i] ?? 0),
    order,
    order.map((i) => shape.kinds[wanted[i] ?? 0] === 'c'),
  );
  const columns = wanted.map(() => new Float64Array(CHUNK_ROWS));
  const odd: OddLines = { text: 0, firstLine: 0, firstText: '', grouped: 0 };
  let rows = 0;
  let line = 1;
  let toSkip = shape.firstRow;
  for await (const piece of linePieces(source, encoding)) {
    let at = piece.start;
    while (toSkip > 0 && at < piece.end) {
      at = piece.bytes.indexOf(10, at) + 1;
      toSkip--;
      line++;
    }
    while (at < piece.end) {
      const before = rows;
      rows = parser.parse(piece.bytes, at, piece.end, columns, rows);
      at = parser.position;
      line += rows - before;
      if (parser.stuck) {
        const end = piece.bytes.indexOf(10, at);
        const text = decode(piece.bytes.subarray(at, end), lineLabel(layout));
        const cutOff = piece.unterminated && end + 1 === piece.end;
        if (readLine(text, layout, wanted, columns, rows, odd, line, cutOff, notes)) rows++;
        at = end + 1;
        line++;
      }
      if (rows === CHUNK_ROWS) {
        yield { rows, columns };
        rows = 0;
      }
    }
  }
  if (rows > 0) yield { rows, columns: columns.map((column) => column.subarray(0, rows)) };
  pushOddNotes(odd, notes);
}

function lineLabel({ encoding }: CsvLayout): typeof encoding.label {
  return encoding.label.startsWith('utf-16') ? 'utf-8' : encoding.label;
}

/** Reads one line with care; true when it gave a row. */
function readLine(
  text: string,
  layout: CsvLayout,
  wanted: readonly number[],
  columns: readonly Float64Array[],
  row: number,
  odd: OddLines,
  line: number,
  cutOff: boolean,
  notes: Note[],
): boolean {
  const { shape } = layout;
  if (text.trim() === '') return false;
  const cells = splitCells(text.replace(/\r$/, ''), shape.dialect.delimiter);
  let numbers = 0;
  let bad: string | undefined;
  wanted.forEach((c, k) => {
    const value = cellNumber(cells[c], shape.kinds[c] === 'c', shape.dialect.decimal, odd);
    if (value === undefined) bad ??= cells[c] ?? '';
    else (columns[k] as Float64Array)[row] = value;
    if (value !== undefined && !Number.isNaN(value)) numbers++;
  });
  if (bad === undefined && numbers > 0) return true;
  if (bad === undefined) return cells.length === shape.columns;
  if (cutOff) {
    notes.push(note('cut-off-line', { line, text: text.trim().slice(0, 60) }));
    return false;
  }
  if (numbers === 0 && /[\p{L}#%/!*=-]/u.test(text)) {
    if (odd.text++ === 0) {
      odd.firstLine = line;
      odd.firstText = text.trim().slice(0, 60);
    }
    if (odd.text > MAX_TEXT_LINES) throw tooMuchText(layout.source.name, odd);
    return false;
  }
  throw badLine(layout, line, text, bad, cells.length);
}

/** NaN for a cell without a value, undefined for one that is no number. */
function cellNumber(
  text: string | undefined,
  clock: boolean,
  decimal: '.' | ',',
  odd: OddLines,
): number | undefined {
  if (text === undefined) return undefined;
  const cell = readCell(text, decimal);
  if (cell.kind === 'missing') return Number.NaN;
  if (clock) return readClock(text);
  if (cell.kind === 'text') return undefined;
  if (cell.grouped) odd.grouped++;
  return cell.value;
}

function pushOddNotes(odd: OddLines, notes: Note[]): void {
  if (odd.text > 0) {
    const { text: lines, firstLine, firstText } = odd;
    notes.push(note('text-lines', { lines, firstLine, firstText }));
  }
  if (odd.grouped > 0) {
    notes.push(note('thousands-separators', { values: odd.grouped }));
  }
}

function badLine(
  { source, shape }: CsvLayout,
  line: number,
  text: string,
  cell: string,
  count: number,
): ArcError {
  const what =
    count < shape.columns
      ? `has ${count} ${count === 1 ? 'value' : 'values'} instead of ${shape.columns}`
      : `has “${cell.slice(0, 40)}” where a number belongs`;
  return new ArcError({
    code: 'bad-log-line',
    what: `${source.name}, line ${line} ${what}: “${text.trim().slice(0, 80)}”.`,
    expected: `a number (decimal ${shape.dialect.decimal === ',' ? 'comma' : 'point'}), or nothing where a value is missing`,
    todo: 'Correct or delete that line, or export the log again.',
  });
}

function tooMuchText(name: string, odd: OddLines): ArcError {
  return new ArcError({
    code: 'too-many-text-lines',
    what: `${name} has more than ${MAX_TEXT_LINES} lines of text between its rows of numbers (first: line ${odd.firstLine}: “${odd.firstText}”).`,
    expected: 'a table of numbers',
    todo: 'Export the trace alone.',
  });
}
