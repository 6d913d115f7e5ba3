import type { ByteSource } from '../../types.js';
import type { ArrayColumn, NumberStream } from '../binary/array-column.js';
import { arrayTable } from '../binary/array-table.js';
import type { LogTable } from '../table.js';
import { listSeries, type SeriesPlace } from './datasets.js';
import type { Dataset } from './library.js';
import { type LoadedFile, loadHdf5 } from './load.js';
import { readSlice } from './read-slice.js';

/**
 * Opens an HDF5 file, or a MATLAB v7.3 file, which is one. The file is held in memory while it is
 * read (at most 1 GiB); the datasets are unpacked piece by piece.
 *
 * @throws ArcError `too-large`, `damaged-file`, `no-series`.
 */
export async function openHdf5(source: ByteSource, format: 'hdf5' | 'mat'): Promise<LogTable> {
  const shared = shareFile(source);
  const loaded = await shared.acquire();
  try {
    const { places, scalars } = listSeries(loaded.file);
    const columns = places.map(
      (place): ArrayColumn => ({
        name: place.name,
        rows: place.rows,
        ...(place.unit === undefined ? {} : { unit: place.unit }),
        open: async () => openSeries(await shared.acquire(), place, shared.release),
      }),
    );
    return await arrayTable({ format, fileName: source.name, columns, scalars, notes: [] });
  } finally {
    shared.release();
  }
}

/** One copy in memory for all who read at a time; it goes with the last of them. */
function shareFile(source: ByteSource): { acquire(): Promise<LoadedFile>; release(): void } {
  let loading: Promise<LoadedFile> | undefined;
  let users = 0;
  return {
    acquire() {
      users++;
      loading ??= loadHdf5(source);
      return loading;
    },
    release() {
      if (--users > 0) return;
      const closing = loading;
      loading = undefined;
      closing?.then((loaded) => loaded.close()).catch(() => {});
    },
  };
}

function openSeries(loaded: LoadedFile, place: SeriesPlace, release: () => void): NumberStream {
  const dataset = loaded.file.get(place.path) as Dataset;
  let at = 0;
  return {
    async read(count) {
      const end = Math.min(place.rows, at + count);
      if (end <= at) return new Float64Array(0);
      const ranges = place.shape.map((side, s): [number, number] => {
        if (s === place.timeSide) return [at, end];
        return side === 1 ? [0, 1] : [place.otherIndex, place.otherIndex + 1];
      });
      const values = readSlice(loaded.module, dataset, ranges);
      at = end;
      return values instanceof Float64Array
        ? values
        : Float64Array.from(values as ArrayLike<number>, Number);
    },
    close: release,
  };
}
