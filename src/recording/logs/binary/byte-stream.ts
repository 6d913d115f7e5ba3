import type { ByteSource } from '../../types.js';

/** Bytes in order, as they lie in the file or as they come out of a decompressor. */
export interface ByteStream {
  /** Place of the next byte, counted from the start of the stream. */
  readonly position: number;
  /** The next bytes; fewer only at the end. Valid until the next call. */
  read(length: number): Promise<Uint8Array>;
  /** Passes over bytes; at the end it stops. */
  skip(length: number): Promise<void>;
}

/** Part of a source, read in place. Skipping costs nothing. */
export function sourceStream(source: ByteSource, offset: number, length: number): ByteStream {
  const end = Math.min(source.size, offset + length);
  let at = offset;
  return {
    get position() {
      return at - offset;
    },
    async read(wanted) {
      const bytes = await source.read(at, Math.max(0, Math.min(wanted, end - at)));
      at += bytes.length;
      return bytes;
    },
    async skip(wanted) {
      at = Math.min(end, at + wanted);
    },
  };
}
