import { ArcError } from '../../core/index.js';
import type { ColumnName } from '../../messages/index.js';
import type { LogColumn, LogTable } from './table.js';
import { foldName } from './words.js';

/**
 * Index of the column that a user means by a name (case and accents aside, or the last part of a path)
 * or by a number from 1.
 *
 * @throws ArcError `bad-channel`.
 */
export function findColumn(table: LogTable, stated: number | string, quantity: string): number {
  const names = table.columns.map(({ name }) => name);
  if (typeof stated === 'string') {
    const exact = names.indexOf(stated);
    if (exact >= 0) return exact;
    const folded = names.map(foldName);
    const wanted = foldName(stated);
    const matches = folded.flatMap((name, i) => (name === wanted ? [i] : []));
    if (matches.length === 1) return matches[0] as number;
    const ends = folded.flatMap((name, i) => (/[^/.]*$/.exec(name)?.[0] === wanted ? [i] : []));
    if (ends.length === 1) return ends[0] as number;
  }
  const number = typeof stated === 'number' || /^\d+$/.test(stated) ? Number(stated) : Number.NaN;
  if (Number.isInteger(number) && number >= 1 && number <= names.length) return number - 1;
  throw new ArcError({
    code: 'bad-channel',
    what: `“${stated}” was stated as the column for ${quantity}, but ${table.fileName} has ${listColumns(table)}.`,
    expected: `one of these names, or a number from 1 to ${names.length}`,
    todo: 'Correct the column.',
  });
}

/** The columns of a table in words, for messages. */
export function listColumns(table: LogTable): string {
  const shown = table.columns.slice(0, 20).map((_, i) => quote(table, i));
  if (table.columns.length > 20) shown.push('…');
  return shown.length === 1 ? `one column: ${shown[0]}` : `the columns ${shown.join(', ')}`;
}

/** One column as sentences name it. */
export function columnName(table: LogTable, index: number): ColumnName {
  const { name, unnamed, unit } = table.columns[index] as LogColumn;
  return { name: unnamed ? null : name, number: index + 1, unit: unit ?? null };
}

/** One column in words, with its unit. */
export function quote(table: LogTable, index: number): string {
  const column = table.columns[index] as LogColumn;
  const unit = column.unit === undefined ? '' : ` [${column.unit}]`;
  return column.unnamed ? `column ${index + 1}${unit}` : `“${column.name}”${unit}`;
}
