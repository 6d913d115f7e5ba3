import { ArcError } from '../../core/index.js';
import { byFile, keysOf } from '../terminal/table-files.js';
import type { SetupRow, SetupTable } from './setup-table.js';

/** Which row of a set-up table belongs to which input. */
export interface Joined {
  rowOf(path: string): SetupRow | undefined;
  /** Rows that belong to no input. */
  unused: SetupRow[];
  /** Inputs without a row. */
  without: string[];
}

/**
 * Joins by path, seen from the folder of the table or from the working folder; a row that gives a bare
 * file name joins the one input of that name, wherever it lies.
 *
 * @throws ArcError `ambiguous-setup` where two rows or two inputs could be meant.
 */
export function joinSetups(table: SetupTable, paths: readonly string[]): Joined {
  const rows = new Map<string, SetupRow>();
  for (const row of table.rows)
    for (const key of keysOf(table.path, row.file)) put(rows, key, row, table.path);
  const found = new Map<string, SetupRow>();
  const owner = new Map<SetupRow, string>();
  for (const path of paths) {
    const row = byFile(rows, path);
    if (!row) continue;
    const other = owner.get(row);
    if (other !== undefined) throw shared(table.path, row, other, path);
    owner.set(row, path);
    found.set(path, row);
  }
  return {
    rowOf: (path) => found.get(path),
    unused: table.rows.filter((row) => !owner.has(row)),
    without: paths.filter((path) => !found.has(path)),
  };
}

function put(map: Map<string, SetupRow>, key: string, row: SetupRow, table: string): void {
  const earlier = map.get(key);
  if (earlier && earlier !== row)
    throw ambiguous(
      `Lines ${earlier.line} and ${row.line} of ${table} are both about ${row.file}.`,
      'one row for each recording',
    );
  map.set(key, row);
}

function shared(table: string, row: SetupRow, one: string, other: string): ArcError {
  return ambiguous(
    `Line ${row.line} of ${table} names ${row.file}, which could be ${one} or ${other}.`,
    'paths where names occur more than once',
  );
}

function ambiguous(what: string, expected: string): ArcError {
  return new ArcError({
    code: 'ambiguous-setup',
    what,
    expected,
    todo: 'Write the path, seen from the folder of the table, in the file column.',
  });
}
