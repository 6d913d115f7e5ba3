import { type FileHandle, open, rename, rm } from 'node:fs/promises';
import type { Table } from './columns.js';
import { rowWriter, type TableFormat } from './row-writer.js';
import type { RowWriter } from './rows-out.js';
import { cannotWrite } from './write-errors.js';

/** A table that appears under its name only when it is complete. */
export interface TableFile extends RowWriter {
  /** Puts the table in its place, in one step. */
  commit(): Promise<void>;
  /** Removes what was written. */
  discard(): Promise<void>;
}

/** Begins a table beside its final place. @throws ArcError `cannot-write`, `disk-full`. */
export async function openTable(
  path: string,
  format: TableFormat,
  table: Table,
): Promise<TableFile> {
  // One name for all runs: what a killed one left is written over by the next.
  const partial = `${path}.partial`;
  const handle = await guarded(path, () => open(partial, 'w'));
  const writer = await rowWriter(format, table, (bytes) =>
    guarded(path, () => writeAll(handle, bytes)),
  );
  return {
    begin: () => writer.begin(),
    rows: (rows) => writer.rows(rows),
    end: () => writer.end(),
    commit: () =>
      guarded(path, async () => {
        await handle.datasync();
        await handle.close();
        await rename(partial, path);
      }),
    discard: async () => {
      await handle.close().catch(() => {});
      await rm(partial, { force: true }).catch(() => {});
    },
  };
}

async function writeAll(handle: FileHandle, bytes: Uint8Array): Promise<void> {
  await handle.appendFile(bytes);
}

async function guarded<T>(path: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw cannotWrite(path, error);
  }
}
