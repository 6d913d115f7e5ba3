import { basename, dirname, resolve } from 'node:path';

/**
 * The names that a row of a table about recordings goes by: its path seen from the folder of the table, its path
 * seen from the working folder, and, where it gives a bare name, that name, wherever the file lies.
 */
export function keysOf(table: string, file: string): string[] {
  const bare = basename(file) === file ? [file] : [];
  return [...new Set([resolve(dirname(table), file), resolve(file), ...bare])];
}

/** What is kept under the names of `keysOf` for the recording of this path; its place goes before its name. */
export function byFile<T>(rows: ReadonlyMap<string, T>, path: string): T | undefined {
  return rows.get(resolve(path)) ?? rows.get(basename(path));
}
