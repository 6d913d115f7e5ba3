import type { ByteSource } from '../types.js';

/** Bytes already in memory. Not copied: the caller must leave them alone while they are read. */
export function bufferSource(bytes: Uint8Array, name = 'recording'): ByteSource {
  return {
    name,
    size: bytes.length,
    read: async (offset, length) => bytes.subarray(offset, offset + length),
  };
}
