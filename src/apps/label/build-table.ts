import { type BatchTally, countResult, doubtsOf, emptyTally } from '../../analysis/index.js';
import type { Table } from './columns.js';
import type { Journal } from './journal.js';
import type { Place } from './journal-lines.js';
import type { TableFormat } from './row-writer.js';
import { openTable } from './table-file.js';

/** What the table came to. */
export interface Built {
  tally: BatchTally;
  rows: number;
  /** Where the records stand that a person should listen to. */
  doubtful: Place[];
}

/**
 * Writes the whole table from the journal, in the order of the places, under another name first: at
 * every moment there is either the old table, none, or the complete new one.
 */
export async function buildTable(
  journal: Journal,
  places: readonly Place[],
  out: { path: string; format: TableFormat; table: Table },
): Promise<Built> {
  const built: Built = { tally: emptyTally(), rows: 0, doubtful: [] };
  const file = await openTable(out.path, out.format, out.table);
  try {
    await file.begin();
    for (const place of places) {
      const record = await journal.read(place);
      countResult(built.tally, record.result);
      if (record.result && doubtsOf(record.result).length > 0) built.doubtful.push(place);
      const rows = out.table.rowsOf(record);
      built.rows += rows.length;
      await file.rows(rows);
    }
    await file.end();
    await file.commit();
    return built;
  } catch (error) {
    await file.discard();
    throw error;
  }
}
