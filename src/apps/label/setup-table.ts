import { readFile } from 'node:fs/promises';
import { parse } from 'csv-parse/sync';
import { ArcError, isArcError } from '../../core/index.js';
import { parseSetup } from '../../setup/index.js';
import type { RawSetup } from './plan.js';
import { readHeading, type SetupColumn } from './setup-columns.js';

/** One row of a set-up table. */
export interface SetupRow {
  /** Line of the table, from 1, for messages. */
  line: number;
  file: string;
  setup: RawSetup;
  /** The user's own columns. */
  own: Readonly<Record<string, string>>;
}

export interface SetupTable {
  path: string;
  rows: SetupRow[];
  /** Names of the user's own columns. */
  own: string[];
}

/**
 * Reads a CSV or TSV table (comma, semicolon or tab) with a heading line, a `file` column, and columns
 * of set-up values. Empty cells say nothing. Every row is checked before any recording is read.
 *
 * @throws ArcError `bad-setup-table`, `unknown-setup-column`.
 */
export async function readSetupTable(path: string): Promise<SetupTable> {
  const [heading, ...lines] = parseTable(path, await readText(path));
  const columns = (heading?.cells ?? []).map(readHeading);
  if (!columns.some((column) => column.holds === 'file'))
    throw bad(path, 'it has no column "file"');
  const named = columns.map((column) => JSON.stringify(column));
  const twice = named.findIndex((name, at) => named.indexOf(name) !== at);
  if (twice >= 0) throw bad(path, `it has the column "${heading?.cells[twice]}" twice`);
  const rows = lines.map(({ cells, line }) => readRow(path, columns, cells, line));
  const own = columns.flatMap((column) => (column.holds === 'own' ? [column.name] : []));
  return { path, rows, own };
}

function readRow(path: string, columns: SetupColumn[], cells: string[], line: number): SetupRow {
  const setup: Record<string, string> = {};
  const own: Record<string, string> = {};
  let file = '';
  columns.forEach((column, at) => {
    const cell = cells[at]?.trim() ?? '';
    if (column.holds === 'file') file = cell;
    else if (column.holds === 'own') own[column.name] = cell;
    else if (cell !== '') setup[column.key] = withUnit(cell, column.unit);
  });
  if (file === '') throw bad(path, `line ${line} names no file`);
  try {
    parseSetup(setup);
  } catch (error) {
    if (!isArcError(error)) throw error;
    throw bad(path, `line ${line} (${file}): ${error.message}`, error);
  }
  return { line, file, setup, own };
}

/** A bare number takes the unit of its heading; a decimal comma stands where the list separator is another. */
function withUnit(cell: string, unit: string): string {
  const number = /^[+-]?\d+(?:,\d+)?$/.test(cell) ? cell.replace(',', '.') : cell;
  return unit !== '' && /^[+-]?(\d+\.?\d*|\.\d+)$/.test(number) ? `${number}${unit}` : number;
}

function parseTable(path: string, text: string): { cells: string[]; line: number }[] {
  const firstLine = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const counts = ['\t', ';', ','].map((mark) => ({ mark, count: firstLine.split(mark).length }));
  const delimiter = counts.reduce((a, b) => (b.count > a.count ? b : a)).mark;
  try {
    const records = parse(text, {
      bom: true,
      delimiter,
      info: true,
      skip_empty_lines: true,
    }) as unknown as { record: string[]; info: { lines: number } }[];
    return records.map(({ record, info }) => ({ cells: record, line: info.lines }));
  } catch (error) {
    throw bad(path, error instanceof Error ? error.message : String(error), error);
  }
}

async function readText(path: string): Promise<string> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    throw bad(path, error instanceof Error ? error.message : String(error), error);
  }
}

function bad(path: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'bad-setup-table',
    what: `The set-up table ${path} cannot be used: ${why}.`,
    expected: 'a CSV table such as: file,wire_mm,gas,volts_v',
    todo: 'Correct the table.',
    cause,
  });
}
