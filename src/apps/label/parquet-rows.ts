import { ByteWriter, ParquetWriter } from 'hyparquet-writer';
import { TOOL_NAME, TOOL_VERSION } from '../../core/index.js';
import type { Cell, Row, Table, TableColumn } from './columns.js';
import type { RowWriter, WriteBytes } from './rows-out.js';

/** Rows of a row group: a few megabytes in memory, and still large enough to read quickly. */
const GROUP_ROWS = 5000;

const TYPES = {
  text: { type: 'BYTE_ARRAY', converted_type: 'UTF8' },
  number: { type: 'DOUBLE' },
  flag: { type: 'BOOLEAN' },
} as const;

/** Rows as Parquet: text, double and boolean columns, all of which may be null. */
export function parquetRows(table: Table, write: WriteBytes): RowWriter {
  const { columns } = table;
  const bytes = new ByteWriter();
  const flush = async (): Promise<void> => {
    const out = new Uint8Array(bytes.buffer, 0, bytes.index).slice();
    bytes.index = 0;
    if (out.length > 0) await write(out);
  };
  const writer = new ParquetWriter({
    writer: Object.assign(bytes, { flush, finish: flush }),
    schema: [
      { name: 'root', num_children: columns.length },
      ...columns.map(({ name, kind }) => ({
        name,
        repetition_type: 'OPTIONAL' as const,
        ...TYPES[kind],
      })),
    ],
    createdBy: `${TOOL_NAME} ${TOOL_VERSION}`,
  });
  let waiting: Row[] = [];
  const writeGroup = async (): Promise<void> => {
    const group = waiting;
    waiting = [];
    if (group.length === 0) return;
    const columnData = columns.map((column, at) => ({
      name: column.name,
      data: group.map((row) => fitting(row[at] ?? null, column)),
    }));
    await writer.write({ columnData, rowGroupSize: GROUP_ROWS });
  };
  return {
    begin: async () => {},
    rows: async (rows) => {
      for (const row of rows) {
        waiting.push(row);
        if (waiting.length === GROUP_ROWS) await writeGroup();
      }
    },
    end: async () => {
      await writeGroup();
      await writer.finish();
    },
  };
}

/** A number that is none is absent, as in the other formats. */
function fitting(cell: Cell, column: TableColumn): Cell {
  return column.kind === 'number' && !Number.isFinite(cell) ? null : cell;
}
