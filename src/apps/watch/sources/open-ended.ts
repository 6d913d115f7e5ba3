import { joinBytes } from './byte-feed.js';

/** Most bytes of a head before the sound. */
const HEAD_BYTES = 64 * 1024;
/** Data sizes from here up are what recorders write when they do not know the length yet. */
const UNKNOWN_FROM = 0x7fff0000;
const UNKNOWN = 0xffffffff;

/**
 * The bytes of a WAV stream with the size of its sound stated as unknown, so that it is read on as long as it
 * comes; a size that can be true ends the stream there. Anything but RIFF passes unchanged.
 */
export async function* openEnded(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let head = new Uint8Array(0);
  let left: number | undefined;
  for await (const chunk of chunks) {
    if (left !== undefined) {
      if (chunk.length > 0) yield chunk.subarray(0, Math.min(chunk.length, left));
      left -= chunk.length;
      if (left <= 0) return;
      continue;
    }
    head = joinBytes(head, chunk);
    const at = dataChunk(head);
    if (at === undefined && head.length < HEAD_BYTES) continue;
    const declared = typeof at === 'number' ? opened(head, at) : UNKNOWN;
    left = declared >= UNKNOWN_FROM ? Number.POSITIVE_INFINITY : Number(at) + 8 + declared;
    yield head.subarray(0, Math.min(head.length, left));
    left -= head.length;
    if (left <= 0) return;
  }
  if (left === undefined && head.length > 0) yield head;
}

/** States the size at a data chunk as unknown and answers what it was; 0 is unknown too. */
function opened(head: Uint8Array, at: number): number {
  const view = new DataView(head.buffer, head.byteOffset, head.length);
  const declared = view.getUint32(at + 4, true);
  view.setUint32(at + 4, UNKNOWN, true);
  return declared === 0 ? UNKNOWN : declared;
}

/** Where the data chunk of a RIFF head begins; `none` for anything else, undefined while it has not come. */
function dataChunk(head: Uint8Array): number | 'none' | undefined {
  const id = (at: number): string => String.fromCharCode(...head.subarray(at, at + 4));
  if (head.length < 4) return undefined;
  if (id(0) !== 'RIFF') return 'none';
  const view = new DataView(head.buffer, head.byteOffset, head.length);
  for (let at = 12; at + 8 <= head.length; ) {
    if (id(at) === 'data') return at;
    const size = view.getUint32(at + 4, true);
    at += 8 + size + (size % 2);
  }
  return undefined;
}
