import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';
import { shortened } from './byte-views.js';

const TAIL_BYTES = 256 * 1024;

/**
 * An Ogg file without the page (or packet) it was cut in; the same source when it is whole. The
 * demultiplexer gives up on a half page.
 */
export async function wholeOggPages(source: ByteSource): Promise<ByteSource> {
  const start = Math.max(0, source.size - TAIL_BYTES);
  const tail = (await source.read(start, TAIL_BYTES)).slice();
  for (let at = tail.length - 27; at >= 0; at--) {
    if (!hasAscii(tail, at, 'OggS')) continue;
    const segments = tail[at + 26]!;
    const table = tail.subarray(at + 27, at + 27 + segments);
    const end = at + 27 + segments + table.reduce((sum, length) => sum + length, 0);
    const endsPacket = segments > 0 && table[segments - 1] !== 255;
    if (table.length === segments && end <= tail.length && endsPacket) {
      return end === tail.length ? source : shortened(source, start + end);
    }
  }
  return source;
}
