import type { ByteSource } from '../types.js';

/** A browser's `Blob` or `File`, read piece by piece. */
export function blobSource(blob: Blob, name = blobName(blob)): ByteSource {
  return {
    name,
    size: blob.size,
    read: async (offset, length) =>
      new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
  };
}

function blobName(blob: Blob): string {
  return 'name' in blob && typeof blob.name === 'string' ? blob.name : 'recording';
}
