import type { ByteSource } from '../types.js';
import { shortened } from './byte-views.js';
import { type Element, type ElementReader, elementReader, writeVint } from './ebml.js';

const SEGMENT = 0x18538067;
const CLUSTER = 0x1f43b675;
const VOID = 0xec;
const CHECKSUM = 0xbf;
/** Seek head, info, tracks, cluster, cues, attachments, chapters, tags (RFC 9559). */
const IN_SEGMENT = [
  0x114d9b74,
  0x1549a966,
  0x1654ae6b,
  CLUSTER,
  0x1c53bb6b,
  0x1941a469,
  0x1043a770,
  0x1254c367,
  VOID,
  CHECKSUM,
];
/** Time, position, previous size, simple block, block group, encrypted block, silent tracks. */
const IN_CLUSTER = [0xe7, 0xa7, 0xab, 0xa3, 0xa0, 0xaf, 0x5854, VOID, CHECKSUM];
/** A file of a great many empty elements must end, not be walked for hours. */
const MAX_ELEMENTS = 5_000_000;

/**
 * A Matroska or WebM file up to the last whole block before a cut or junk; the same source when it is whole.
 * The demultiplexer leaves out a cluster that is not all there, which may be seconds of sound, and its search
 * for the next element behind junk (mediabunny 1.61) never ends when there is none.
 */
export async function wholeMatroskaBlocks(source: ByteSource): Promise<ByteSource> {
  const read = elementReader(source);
  const header = await read(0);
  const segment = header && (await read(header.end));
  if (segment?.id !== SEGMENT) return source;
  const end = segment.unknown ? source.size : Math.min(segment.end, source.size);
  let at = segment.body;
  for (let count = 0; at < end && count < MAX_ELEMENTS; count++) {
    const next = await read(at);
    if (!next || !IN_SEGMENT.includes(next.id)) return shortened(source, at);
    if (next.unknown) {
      at = await endOfBlocks(read, next.body, end);
      const after = at < end ? await read(at) : undefined;
      if (at < end && !(after && IN_SEGMENT.includes(after.id))) return shortened(source, at);
      continue;
    }
    const whole = next.end <= end;
    if (next.id !== CLUSTER) {
      if (!whole) return shortened(source, next.start);
    } else {
      const last = await endOfBlocks(read, next.body, Math.min(next.end, end));
      if (!whole || last < next.end) return endedIn(source, next, last);
    }
    at = next.end;
  }
  return source;
}

/** Ends the file within a cluster, whose stated size is made to fit. */
function endedIn(source: ByteSource, cluster: Element, last: number): ByteSource {
  const size = writeVint(last - cluster.body, cluster.body - cluster.sizeAt);
  return shortened(patched(source, cluster.sizeAt, size), last);
}

/** Where the whole blocks of a cluster end: at a cut, at junk, or at the next element of the segment. */
async function endOfBlocks(read: ElementReader, from: number, end: number): Promise<number> {
  let at = from;
  for (let count = 0; at < end && count < MAX_ELEMENTS; count++) {
    const next = await read(at);
    if (!next || next.unknown || next.end > end || !IN_CLUSTER.includes(next.id)) return at;
    at = next.end;
  }
  return at;
}

function patched(source: ByteSource, at: number, bytes: Uint8Array): ByteSource {
  return {
    name: source.name,
    size: source.size,
    async read(offset, length) {
      const out = (await source.read(offset, length)).slice();
      for (const [i, byte] of bytes.entries()) {
        const place = at + i - offset;
        if (place >= 0 && place < out.length) out[place] = byte;
      }
      return out;
    },
  };
}
