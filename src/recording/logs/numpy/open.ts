import type { ByteSource } from '../../types.js';
import { type ArrayFile, arrayTable } from '../binary/array-table.js';
import { sourceStream } from '../binary/byte-stream.js';
import type { LogTable } from '../table.js';
import { npyContent } from './columns.js';
import { listZip } from './zip.js';

/** One NumPy array, plain or structured. */
export async function openNpy(source: ByteSource): Promise<LogTable> {
  const content = await npyContent(() => sourceStream(source, 0, source.size), source.name, '');
  return arrayTable({ format: 'npy', fileName: source.name, ...content, notes: [] });
}

/** An archive of NumPy arrays. */
export async function openNpz(source: ByteSource): Promise<LogTable> {
  const file: ArrayFile & {
    columns: ArrayFile['columns'][number][];
    scalars: ArrayFile['scalars'][number][];
  } = {
    format: 'npz',
    fileName: source.name,
    columns: [],
    scalars: [],
    notes: [],
  };
  for (const entry of await listZip(source)) {
    if (!entry.name.endsWith('.npy')) continue;
    const content = await npyContent(await entry.open(), source.name, entry.name.slice(0, -4));
    file.columns.push(...content.columns);
    file.scalars.push(...content.scalars);
  }
  return arrayTable(file);
}
