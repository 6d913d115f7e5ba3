import { File as HdfFile, ready } from 'h5wasm';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { bytesOf, number } from './wav-bytes.js';

/** Named columns of equal length. */
export type Columns = Record<string, Float64Array>;

/** Parquet by a writer that shares no code with the reader. `FLOAT` halves the width. */
export function parquetOf(
  columns: Columns,
  type: 'DOUBLE' | 'FLOAT' = 'DOUBLE',
  rateHz?: number,
): Uint8Array {
  const columnData = Object.entries(columns).map(([name, data]) => ({
    name,
    data: type === 'FLOAT' ? Float32Array.from(data) : data,
    type,
  }));
  const kvMetadata = rateHz === undefined ? [] : [{ key: 'sample_rate', value: String(rateHz) }];
  return new Uint8Array(parquetWriteBuffer({ columnData, kvMetadata }));
}

/**
 * HDF5 by the HDF5 library. With `matlab`, as MATLAB v7.3 lays it out: behind 512 bytes of text; with
 * `packed`, in deflated chunks.
 */
export async function hdf5Of(
  columns: Columns,
  matlab = false,
  packed = false,
): Promise<Uint8Array> {
  const { FS } = (await ready) as unknown as {
    FS: { readFile(path: string): Uint8Array; unlink(path: string): void };
  };
  const file = new HdfFile('/columns.h5', 'w');
  const chunked = packed ? { chunks: [100], compression: 'gzip' as const } : {};
  for (const [name, data] of Object.entries(columns)) {
    const shape = matlab ? [1, data.length] : [data.length];
    file.create_dataset({ name, data, shape, ...chunked });
  }
  file.close();
  const body = FS.readFile('/columns.h5').slice();
  FS.unlink('/columns.h5');
  if (!matlab) return body;
  return bytesOf('MATLAB 7.3 MAT-file, Platform: invented'.padEnd(512, '\0'), body);
}

/** MATLAB v5 (MAT-File Format, The MathWorks: header of 128 bytes, one miMATRIX element a variable). */
export function mat5Of(columns: Columns): Uint8Array {
  const element = (type: number, body: Uint8Array): Uint8Array =>
    bytesOf(
      number(type, 4),
      number(body.length, 4),
      body,
      Array((8 - (body.length % 8)) % 8).fill(0),
    );
  const matrices = Object.entries(columns).map(([name, data]) =>
    element(
      14,
      bytesOf(
        element(6, bytesOf(number(6, 4), number(0, 4))),
        element(5, bytesOf(number(data.length, 4), number(1, 4))),
        element(1, bytesOf(name)),
        element(9, bitsOf(data)),
      ),
    ),
  );
  const header = 'MATLAB 5.0 MAT-file, Platform: invented'.padEnd(124, ' ');
  return bytesOf(header, [0, 1], 'IM', ...matrices);
}

/** NumPy's format 1.0: a table of float64, a row a sample. */
export function npyOf(columns: Columns): Uint8Array {
  const all = Object.values(columns);
  const rows = all[0]!.length;
  const table = new Float64Array(rows * all.length);
  for (const [c, data] of all.entries())
    for (let i = 0; i < rows; i++) table[i * all.length + c] = data[i]!;
  const dict = `{'descr': '<f8', 'fortran_order': False, 'shape': (${rows}, ${all.length}), }`;
  const header = `${dict.padEnd(117, ' ')}\n`;
  return bytesOf([0x93], 'NUMPY', [1, 0], number(header.length, 2), header, bitsOf(table));
}

/** CSV with a fixed number of significant digits, or the shortest that read back. */
export function csvOf(columns: Columns, digits?: number): Uint8Array {
  const show = (value: number): string =>
    digits === undefined ? String(value) : value.toPrecision(digits);
  const all = Object.values(columns);
  const lines = Array.from(all[0]!, (_, i) => all.map((data) => show(data[i]!)).join(','));
  return new TextEncoder().encode(`${Object.keys(columns).join(',')}\n${lines.join('\n')}\n`);
}

const bitsOf = (data: Float64Array): Uint8Array =>
  new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
