import type { ByteSource } from '../types.js';

/** The first `size` bytes of a source. */
export function shortened(source: ByteSource, size: number): ByteSource {
  return {
    name: source.name,
    size,
    read: (offset, length) => source.read(offset, Math.max(0, Math.min(length, size - offset))),
  };
}

const BLOCK_BYTES = 64 * 1024;

/** Without the zeros at its end, which a recorder leaves that reserves space and is switched off. */
export async function withoutZeroTail(source: ByteSource): Promise<ByteSource> {
  for (let end = source.size; end > 0; ) {
    const start = Math.max(0, end - BLOCK_BYTES);
    const bytes = await source.read(start, end - start);
    const last = bytes.findLastIndex((byte) => byte !== 0);
    if (last >= 0)
      return start + last + 1 === source.size ? source : shortened(source, start + last + 1);
    end = start;
  }
  return shortened(source, 0);
}

/**
 * A source whose reads wait for each other and give copies. The demultiplexer reads ahead while others
 * read, and a source may hand out one buffer again and again.
 */
export function oneAtATime(source: ByteSource): ByteSource {
  let last: Promise<unknown> = Promise.resolve();
  return {
    name: source.name,
    size: source.size,
    read(offset, length) {
      const next = last.then(async () => (await source.read(offset, length)).slice());
      last = next.catch(() => {});
      return next;
    },
  };
}
