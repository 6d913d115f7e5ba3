import { ArcError, type Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { ByteSource } from '../../types.js';
import { refuseOwnText } from '../own-table.js';
import type { LogColumn, LogTable } from '../table.js';
import { readCell, splitCells } from './cells.js';
import { readClock } from './clock.js';
import { detectShape, isTableRow, type TableShape } from './dialect.js';
import { decode, detectEncoding, type Encoding } from './encoding.js';
import { type Header, readHeader } from './header.js';
import type { CsvLayout } from './layout.js';
import { readStatedRate } from './metadata.js';
import { readRows } from './rows.js';

const HEAD_BYTES = 256 * 1024;
const PREVIEW_ROWS = 400;

/**
 * Opens a text table: dialect, header, units and metadata are read from its first 256 KiB.
 *
 * @throws ArcError `not-a-table`, `results-table`, `comma-twice`.
 */
export async function openCsvTable(source: ByteSource): Promise<LogTable> {
  const head = (await source.read(0, Math.min(HEAD_BYTES, source.size))).slice();
  const encoding = detectEncoding(head);
  const text = decode(head.subarray(encoding.markBytes), encoding.label);
  refuseOwnText(source.name, text);
  const lines = text.split(/\r\n|\n|\r/);
  if (head.length < source.size || lines.at(-1) === '') lines.pop();
  const shape = detectShape(lines);
  if (shape === undefined) throw notATable(source.name, lines);
  const header = readHeader(lines, shape);
  refuseDoubleComma(source.name, lines, shape, header);
  const notes: Note[] = dialectNotes(encoding, shape);
  const rows = lines
    .slice(shape.firstRow, shape.firstRow + PREVIEW_ROWS)
    .filter((line) => isTableRow(line, shape));
  const statedRate = readStatedRate(lines.slice(0, shape.firstRow));
  const layout: CsvLayout = { source, encoding, shape, header };
  return {
    format: 'csv',
    fileName: source.name,
    columns: describeColumns(rows, shape, header),
    ...(statedRate === undefined ? {} : { statedRate }),
    notes,
    read: (wanted) => readRows(layout, wanted, notes),
  };
}

/** Names, units and first values of the columns. */
export function describeColumns(
  rows: readonly string[],
  shape: TableShape,
  header: Header,
): LogColumn[] {
  const cells = rows.map((line) => splitCells(line, shape.dialect.delimiter));
  return shape.kinds.map((kind, c) => {
    const unit = header.units[c];
    return {
      name: header.names[c] ?? `column ${c + 1}`,
      unnamed: header.names[c] === undefined,
      ...(unit === undefined ? {} : { unit }),
      ...(kind === 'c' ? { clock: true } : {}),
      preview: Float64Array.from(cells, (row) => cellValue(row[c] ?? '', kind, shape)),
    };
  });
}

function cellValue(text: string, kind: string, shape: TableShape): number {
  if (kind === 'c') return readClock(text) ?? Number.NaN;
  const cell = readCell(text, shape.dialect.decimal);
  return cell.kind === 'number' ? cell.value : Number.NaN;
}

/** What is said of the way a table is written. */
export function dialectNotes(encoding: Encoding, { dialect }: TableShape): Note[] {
  const notes: Note[] = [];
  if (dialect.decimal === ',') {
    notes.push(note('decimal-comma'));
  }
  if (encoding.label !== 'utf-8') {
    notes.push(note('text-encoding', { encoding: encoding.label }));
  }
  return notes;
}

/** `0,001,23,5` under the header `t,U`: commas both as delimiter and as decimal sign. */
function refuseDoubleComma(
  name: string,
  lines: readonly string[],
  shape: TableShape,
  header: Header,
): void {
  if (shape.dialect.delimiter !== ',' || header.names.some((found) => found !== undefined)) return;
  const above = lines[shape.firstRow - 1];
  if (above === undefined || !/\p{L}/u.test(above)) return;
  if (splitCells(above, ',').length * 2 !== shape.columns) return;
  throw new ArcError({
    code: 'comma-twice',
    what: `${name}, line ${shape.firstRow + 1}: “${(lines[shape.firstRow] ?? '').slice(0, 60)}” has twice as many values as the header has names; the comma seems to be delimiter and decimal sign at once.`,
    expected: 'a decimal point, or another delimiter beside the decimal comma',
    todo: 'Export again with semicolons or tabs between the columns.',
  });
}

function notATable(name: string, lines: readonly string[]): ArcError {
  const first = lines.find((line) => line.trim() !== '') ?? '';
  return new ArcError({
    code: 'not-a-table',
    what: `${name} is text without a table of numbers (it begins “${first.trim().slice(0, 60)}”).`,
    expected: 'rows of numbers separated by commas, semicolons, tabs or spaces',
    todo: 'Export the trace as CSV, one sample a line.',
  });
}
