import { ArcError } from '../../../core/index.js';
import type { ByteSource } from '../../types.js';
import type { File, H5Module } from './library.js';

/** The library needs the whole file at hand. */
const MAX_BYTES = 1024 ** 3;
const PIECE = 16 * 1024 * 1024;

/** An HDF5 file opened within the library's own memory. */
export interface LoadedFile {
  file: File;
  module: H5Module;
  /** Closes it and frees its memory. */
  close(): void;
}

/**
 * Loads a file into the HDF5 library.
 *
 * @throws ArcError `too-large` over 1 GiB, `damaged-file`.
 */
export async function loadHdf5(source: ByteSource): Promise<LoadedFile> {
  if (source.size > MAX_BYTES) throw tooLarge(source);
  const { File, ready } = await import('h5wasm');
  const module = (await ready) as unknown as H5Module;
  const { FS } = module;
  silence(module);
  const bytes = new Uint8Array(source.size);
  let at = 0;
  while (at < bytes.length) {
    const piece = await source.read(at, Math.min(PIECE, bytes.length - at));
    if (piece.length === 0) break;
    bytes.set(piece, at);
    at += piece.length;
  }
  const path = `arc-${globalThis.crypto.randomUUID()}.h5`;
  FS.createDataFile('/', path, bytes, true, true, true);
  try {
    const file = new File(`/${path}`, 'r');
    if (file.file_id < 0n) throw damaged(source.name);
    return {
      file,
      module,
      close: () => {
        file.close();
        FS.unlink(`/${path}`);
      },
    };
  } catch (error) {
    FS.unlink(`/${path}`);
    throw error;
  }
}

/** The library prints each error of its own to its standard error; ours are said by us. */
function silence({ FS }: H5Module): void {
  const tty = FS.streams?.[2]?.tty;
  if (tty) tty.ops = { ...tty.ops, put_char: () => {}, fsync: () => {} };
}

function tooLarge(source: ByteSource): ArcError {
  return new ArcError({
    code: 'too-large',
    what: `${source.name} has ${Math.round(source.size / 1e6)} MB.`,
    expected: `an HDF5 file of at most ${Math.round(MAX_BYTES / 1e6)} MB, because it is held in memory`,
    todo: 'Cut the recording into parts, or save it as Parquet, NumPy or CSV, which are read piece by piece.',
  });
}

function damaged(fileName: string): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${fileName} cannot be opened as HDF5.`,
    expected: 'an intact HDF5 file that is not being written',
    todo: 'Close the program that writes it, or copy it again.',
  });
}
