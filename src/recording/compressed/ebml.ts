import type { ByteSource } from '../types.js';

/** Head of an EBML element (RFC 8794), with its place in the file. */
export interface Element {
  id: number;
  start: number;
  /** Where its size field stands, between the id and the body. */
  sizeAt: number;
  body: number;
  end: number;
  /** True for the size "unknown" of files written live; `end` then means nothing. */
  unknown: boolean;
}

/** Reads element heads one after another; answers undefined where there is none. */
export type ElementReader = (start: number) => Promise<Element | undefined>;

const WINDOW_BYTES = 4096;

/** An element reader that reads ahead a little, because heads lie close together. */
export function elementReader(source: ByteSource): ElementReader {
  let window = new Uint8Array(0);
  let windowStart = 0;
  return async (start) => {
    const inside = start >= windowStart && start + 12 <= windowStart + window.length;
    if (!inside) {
      window = (await source.read(start, WINDOW_BYTES)).slice();
      windowStart = start;
    }
    return parseElement(window.subarray(start - windowStart), start);
  };
}

function parseElement(head: Uint8Array, start: number): Element | undefined {
  const idLength = head[0] ? Math.clz32(head[0]) - 23 : 9;
  const size = idLength <= 4 ? readVint(head, idLength) : undefined;
  if (!size) return undefined;
  const id = head.subarray(0, idLength).reduce((sum, byte) => sum * 256 + byte, 0);
  const body = start + size.next;
  const { unknown } = size;
  return { id, start, sizeAt: start + idLength, body, end: body + size.value, unknown };
}

/** An EBML number of 1 to 8 bytes: leading zero bits tell its length. */
export function readVint(
  bytes: Uint8Array,
  at: number,
): { value: number; next: number; unknown: boolean } | undefined {
  const first = bytes[at] ?? 0;
  const length = first === 0 ? 9 : Math.clz32(first) - 23;
  if (length > 8 || at + length > bytes.length) return undefined;
  let value = first & (0xff >> length);
  let unknown = value === 0xff >> length;
  for (let i = 1; i < length; i++) {
    const byte = bytes[at + i]!;
    value = value * 256 + byte;
    unknown &&= byte === 0xff;
  }
  return { value, next: at + length, unknown };
}

/** A size as an EBML number of exactly `length` bytes. */
export function writeVint(value: number, length: number): Uint8Array {
  const out = new Uint8Array(length);
  for (let i = length - 1, rest = value; i >= 0; i--, rest = Math.floor(rest / 256)) {
    out[i] = rest % 256;
  }
  out[0] = out[0]! | (0x80 >> (length - 1));
  return out;
}
