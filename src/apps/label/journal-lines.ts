import type { FileHandle } from 'node:fs/promises';

/** Where a line stands in a file, in bytes, without its line break. */
export interface Place {
  offset: number;
  length: number;
}

const CHUNK_BYTES = 1 << 20;

/**
 * The complete lines of a file with their places. What follows the last line break is not given: it
 * was being written when its writer stopped.
 */
export async function* completeLines(
  handle: FileHandle,
): AsyncGenerator<{ place: Place; text: string }> {
  const chunk = Buffer.alloc(CHUNK_BYTES);
  let rest: Buffer = Buffer.alloc(0);
  let offset = 0;
  for (let position = 0; ; ) {
    const { bytesRead } = await handle.read(chunk, 0, CHUNK_BYTES, position);
    if (bytesRead === 0) return;
    position += bytesRead;
    rest = Buffer.concat([rest, chunk.subarray(0, bytesRead)]);
    let start = 0;
    for (;;) {
      const end = rest.indexOf(10, start);
      if (end < 0) break;
      yield {
        place: { offset: offset + start, length: end - start },
        text: rest.toString('utf8', start, end),
      };
      start = end + 1;
    }
    rest = rest.subarray(start);
    offset += start;
  }
}
