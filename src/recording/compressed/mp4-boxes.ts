import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';

/** Where the body of a box of an MP4 or QuickTime file lies. */
export interface Box {
  offset: number;
  bytes: number;
}

const MAX_BOXES = 10_000;
const MAX_INDEX_BYTES = 64 * 1024 * 1024;

/** Finds a top-level box. Undefined when there is none before the end, or the boxes make no sense. */
export async function findTopBox(source: ByteSource, type: string): Promise<Box | undefined> {
  let at = 0;
  for (let count = 0; at + 8 <= source.size && count < MAX_BOXES; count++) {
    const head = (await source.read(at, 16)).slice();
    const view = new DataView(head.buffer);
    let size = view.getUint32(0);
    let headBytes = 8;
    if (size === 1 && head.length === 16) {
      size = Number(view.getBigUint64(8));
      headBytes = 16;
    }
    if (size === 0) size = source.size - at;
    if (size < headBytes) return undefined;
    if (String.fromCharCode(...head.subarray(4, 8)) === type) {
      return { offset: at + headBytes, bytes: Math.min(size, source.size - at) - headBytes };
    }
    at += size;
  }
  return undefined;
}

/** All of the index, or undefined when there is none or it is absurdly large. */
async function readIndex(source: ByteSource): Promise<Uint8Array | undefined> {
  const moov = await findTopBox(source, 'moov');
  if (!moov || moov.bytes > MAX_INDEX_BYTES) return undefined;
  return (await source.read(moov.offset, moov.bytes)).slice();
}

/** True when the index holds a sample entry of a protected sound track (`enca`, `drms`). */
export async function hasProtectedEntry(source: ByteSource): Promise<boolean> {
  const bytes = await readIndex(source);
  for (let at = 0; bytes && at + 4 <= bytes.length; at++) {
    if (hasAscii(bytes, at, 'enca') || hasAscii(bytes, at, 'drms')) return true;
  }
  return false;
}

/**
 * The Apple Lossless settings ("magic cookie", 24 bytes) of an MP4 file: the body of the `alac` box inside
 * the `alac` sample entry. Undefined when there is none.
 */
export async function findAlacCookie(source: ByteSource): Promise<Uint8Array | undefined> {
  const bytes = await readIndex(source);
  for (let at = 0; bytes && at + 36 <= bytes.length; at++) {
    // Size 36, type `alac`, version and flags 0, then the cookie.
    const view = new DataView(bytes.buffer, at, 12);
    if (view.getUint32(0) !== 36 || view.getUint32(4) !== 0x616c6163 || view.getUint32(8) !== 0)
      continue;
    return bytes.slice(at + 12, at + 36);
  }
  return undefined;
}
