import { hasAscii, hasBytes } from '../sniff.js';
import { csvReader } from './csv/reader.js';
import { type TableReader, tableReader } from './table-reader.js';

const NPY = [0x93, 0x4e, 0x55, 0x4d, 0x50, 0x59];
const HDF5 = [0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a];
/** HDF5 may start behind a block of the user's own, at a power of two. */
const HDF5_PLACES = [0, 512, 1024, 2048, 4096, 8192, 16384, 32768];

/**
 * Readers of electrical logs; the code (and library) behind a binary one is loaded when it is first
 * used. Text comes last: it takes every text.
 */
export const LOG_READERS: readonly TableReader[] = [
  tableReader({
    format: 'parquet',
    title: 'Parquet',
    sniff: (head) => hasAscii(head, 0, 'PAR1') || hasAscii(head, 0, 'PARE'),
    openTable: async (source) => (await import('./parquet/open.js')).openParquet(source),
  }),
  tableReader({
    format: 'hdf5',
    title: 'HDF5',
    sniff: (head) => isHdf5(head) && !hasAscii(head, 0, 'MATLAB'),
    openTable: async (source) => (await import('./hdf5/open.js')).openHdf5(source, 'hdf5'),
  }),
  tableReader({
    format: 'mat',
    title: 'MATLAB (v7.3)',
    sniff: (head) => isHdf5(head) && hasAscii(head, 0, 'MATLAB'),
    openTable: async (source) => (await import('./hdf5/open.js')).openHdf5(source, 'mat'),
  }),
  tableReader({
    format: 'mat',
    title: 'MATLAB (v5 to v7)',
    sniff: isMat5,
    openTable: async (source) => (await import('./mat/open.js')).openMat(source),
  }),
  tableReader({
    format: 'npy',
    title: 'NumPy array (.npy)',
    sniff: (head) => hasBytes(head, 0, NPY),
    openTable: async (source) => (await import('./numpy/open.js')).openNpy(source),
  }),
  tableReader({
    format: 'npz',
    title: 'NumPy archive (.npz)',
    sniff: (head) => hasAscii(head, 0, 'PK\x03\x04') && firstEntryIsArray(head),
    openTable: async (source) => (await import('./numpy/open.js')).openNpz(source),
  }),
  csvReader,
];

function isHdf5(head: Uint8Array): boolean {
  return HDF5_PLACES.some((place) => hasBytes(head, place, HDF5));
}

/** The version word 0x0100 and the letters `MI` behind 124 bytes of text, in either byte order. */
function isMat5(head: Uint8Array): boolean {
  return (
    hasBytes(head, 124, [0x00, 0x01, 0x49, 0x4d]) || hasBytes(head, 124, [0x01, 0x00, 0x4d, 0x49])
  );
}

function firstEntryIsArray(head: Uint8Array): boolean {
  const length = (head[26] ?? 0) | ((head[27] ?? 0) << 8);
  return length > 4 && length < 1024 && hasAscii(head, 30 + length - 4, '.npy');
}
