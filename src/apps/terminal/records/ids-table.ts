import { readFile } from 'node:fs/promises';
import { parse } from 'csv-parse/sync';
import { ArcError } from '../../../core/index.js';
import { byFile, keysOf } from '../table-files.js';
import type { ReadName } from './id-pattern.js';

/** Column that names the recording, and the one with the wall-clock time; all others are identifiers. */
const FILE = 'file';
const TIME = 'welded_at';

/**
 * Reads a CSV table with a column `file`, identifiers in columns of their own (`part`, `seam`, `robot`, …), and
 * the wall-clock time in `welded_at`. A row belongs to the file of that path, seen from the table or the working
 * folder; one with a bare name to every file of that name.
 *
 * @throws ArcError `bad-ids`
 */
export async function idsTable(path: string): Promise<ReadName> {
  const rows = new Map<string, Record<string, string>>();
  for (const row of parsed(path, await textOf(path))) {
    const file = row[FILE] ?? '';
    if (file === '') throw bad(path, 'a row has no file');
    for (const key of keysOf(path, file)) {
      if (rows.has(key)) throw bad(path, `${file} is in it twice`);
      rows.set(key, row);
    }
  }
  return (name) => {
    const row = byFile(rows, name);
    if (!row) return null;
    const given = Object.entries(row).filter(([key, value]) => key !== FILE && value !== '');
    const ids = Object.fromEntries(given.filter(([key]) => key !== TIME));
    return { ids, time: row[TIME] || null };
  };
}

function parsed(path: string, text: string): Record<string, string>[] {
  const head = /^[^\r\n]*/u.exec(text)?.[0] ?? '';
  const delimiter = head.includes(';') ? ';' : head.includes('\t') ? '\t' : ',';
  try {
    const rows = parse(text, {
      bom: true,
      delimiter,
      trim: true,
      skip_empty_lines: true,
      columns: (names: string[]) => names.map((one) => one.trim().toLowerCase()),
    }) as Record<string, string>[];
    if (rows.length > 0 && !(FILE in rows[0]!)) throw new Error('it has no column "file"');
    return rows;
  } catch (error) {
    throw bad(path, error instanceof Error ? error.message : String(error), error);
  }
}

async function textOf(path: string): Promise<string> {
  return readFile(path, 'utf8').catch((error: unknown) => {
    throw bad(path, error instanceof Error ? error.message : String(error), error);
  });
}

function bad(path: string, why: string, cause?: unknown): ArcError {
  return new ArcError({
    code: 'bad-ids',
    what: `The table of identifiers ${path} cannot be used: ${why}.`,
    expected: 'a CSV table such as: file,part,seam,robot,welded_at',
    todo: 'Correct the table.',
    cause,
  });
}
