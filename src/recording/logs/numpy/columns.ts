import type { ArrayColumn } from '../binary/array-column.js';
import { numbersFrom } from '../binary/array-column.js';
import type { ByteStream } from '../binary/byte-stream.js';
import { seriesOf } from '../binary/matrix-columns.js';
import { readNumbers, sizeOf } from '../binary/numbers.js';
import type { Scalar } from '../binary/stated-rate.js';
import { readNpyHeader } from './header.js';

/** Series and lone numbers of one `.npy` array. */
export interface NpyContent {
  columns: ArrayColumn[];
  scalars: Scalar[];
}

/**
 * Looks into one array.
 *
 * @param open a fresh stream from the first byte of the `.npy` data
 * @param name name in the archive; empty for a file of its own
 * @throws ArcError `damaged-file`.
 */
export async function npyContent(
  open: () => ByteStream,
  fileName: string,
  name: string,
): Promise<NpyContent> {
  const stream = open();
  const header = await readNpyHeader(stream, fileName);
  if (header === undefined) return { columns: [], scalars: [] };
  const dataStart = stream.position;
  const { fields, itemBytes, shape, fortranOrder } = header;
  if (shape.every((side) => side === 1)) {
    const bytes = await stream.read(itemBytes);
    if (bytes.length < itemBytes) return { columns: [], scalars: [] };
    const scalars = fields.map((field) => ({
      name: joinName(name, field.name),
      value: readNumbers(bytes, field.type, field.little, 1, field.offset)[0] ?? Number.NaN,
    }));
    return { columns: [], scalars };
  }
  const columns: ArrayColumn[] = [];
  for (const field of fields) {
    for (const series of seriesOf(shape, !fortranOrder)) {
      const base = joinName(name, field.name);
      const number = series.number;
      const start = dataStart + series.start * itemBytes + field.offset;
      columns.push({
        name:
          base === ''
            ? `column ${number ?? 1}`
            : number === undefined
              ? base
              : `${base}[${number}]`,
        unnamed: base === '',
        rows: series.rows,
        open: async () => {
          const bytes = open();
          await bytes.skip(start);
          const stride = series.step * itemBytes;
          return numbersFrom(bytes, {
            ...field,
            stride: Math.max(stride, sizeOf(field.type)),
            rows: series.rows,
          });
        },
      });
    }
  }
  return { columns, scalars: [] };
}

function joinName(name: string, field: string | undefined): string {
  if (field === undefined) return name;
  return name === '' ? field : `${name}.${field}`;
}
