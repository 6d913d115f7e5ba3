import type { SeriesFile } from '../../../../lab/simulate/index.js';

/** Types of the numbers in a `.npy` file: NumPy's names for little-endian half, 16-bit integer and single. */
export type NpyType = '<f2' | '<i2' | '<f4';

/** A `.npy` file, version 1.0, C order, of one dimension, or of two where a row holds several numbers. */
export function npyBytes(
  type: NpyType,
  file: SeriesFile<Uint16Array | Int16Array | Float32Array>,
): Uint8Array {
  const shape = file.width === 1 ? `(${file.rows},)` : `(${file.rows}, ${file.width})`;
  const text = `{'descr': '${type}', 'fortran_order': False, 'shape': ${shape}, }`;
  // Magic, version and length take 10 bytes; header and line end fill up to a multiple of 64.
  const length = 64 * Math.ceil((10 + text.length + 1) / 64) - 10;
  const pieces = file.all();
  const size = pieces.reduce((sum, piece) => sum + piece.byteLength, 0);
  const bytes = new Uint8Array(10 + length + size);
  bytes.set([0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59, 1, 0, length & 0xff, length >> 8]);
  bytes.set(new TextEncoder().encode(`${text.padEnd(length - 1)}\n`), 10);
  let at = 10 + length;
  for (const piece of pieces) {
    bytes.set(new Uint8Array(piece.buffer, piece.byteOffset, piece.byteLength), at);
    at += piece.byteLength;
  }
  return bytes;
}
