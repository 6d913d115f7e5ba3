import { type CsvFlavour, csvCell } from '../view/index.js';
import type { Cell, Row, Table } from './columns.js';
import type { RowWriter, WriteBytes } from './rows-out.js';

/** How a table is stored. `excel` is CSV that a spreadsheet opens without running cells as formulas. */
export type TableFormat = 'csv' | 'excel' | 'tsv' | 'ndjson' | 'parquet';

/** Text is gathered to about this many characters before it is written. */
const GATHER = 1 << 16;

export async function rowWriter(
  format: TableFormat,
  table: Table,
  write: WriteBytes,
  gather: number = GATHER,
): Promise<RowWriter> {
  if (format === 'parquet') {
    const { parquetRows } = await import('./parquet-rows.js');
    return parquetRows(table, write);
  }
  const names = table.columns.map((column) => column.name);
  if (format === 'ndjson') return textRows('', (row) => jsonLine(names, row), write, gather);
  const [separator, flavour]: [string, CsvFlavour] =
    format === 'tsv' ? ['\t', 'plain'] : [',', format === 'excel' ? 'excel' : 'plain'];
  const line = (row: Row): string =>
    row.map((cell) => csvCell(plain(cell), flavour, separator)).join(separator) + end;
  const end = format === 'tsv' ? '\n' : '\r\n';
  const mark = flavour === 'excel' ? '\uFEFF' : '';
  return textRows(`${mark}${names.join(separator)}${end}`, line, write, gather);
}

function plain(cell: Cell): string | number | null {
  return typeof cell === 'boolean' ? String(cell) : cell;
}

function jsonLine(names: readonly string[], row: Row): string {
  return `${JSON.stringify(Object.fromEntries(names.map((name, at) => [name, row[at] ?? null])))}\n`;
}

function textRows(
  head: string,
  line: (row: Row) => string,
  write: WriteBytes,
  gather: number,
): RowWriter {
  let gathered = '';
  const flush = async (): Promise<void> => {
    const bytes = new TextEncoder().encode(gathered);
    gathered = '';
    if (bytes.length > 0) await write(bytes);
  };
  return {
    begin: async () => {
      gathered = head;
      if (gather === 0) await flush();
    },
    rows: async (rows) => {
      for (const row of rows) {
        gathered += line(row);
        if (gathered.length > gather) await flush();
      }
    },
    end: flush,
  };
}
