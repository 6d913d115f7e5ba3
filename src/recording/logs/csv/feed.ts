import { ArcError } from '../../../core/index.js';
import type { ByteSource } from '../../types.js';
import type { Encoding } from './encoding.js';

const CHUNK = 1 << 20;
/** A line longer than this is no log. */
const MAX_LINE = 1 << 20;
const NEWLINE = 10;

/** Whole lines: `bytes[start..end)`, the last byte always a line end. Valid until the next one. */
export interface LinePiece {
  bytes: Uint8Array;
  start: number;
  end: number;
  /** True when the file ended without a line end, so that the last line may be cut off. */
  unterminated: boolean;
}

/**
 * The text of a file in pieces of whole lines, as UTF-8 (or a one-byte code, whose digits are the
 * same). Memory is bounded by one piece whatever the length of the file.
 *
 * @throws ArcError `line-too-long`.
 */
export async function* linePieces(
  source: ByteSource,
  encoding: Encoding,
): AsyncGenerator<LinePiece> {
  let held = new Uint8Array(2 * CHUNK);
  let used = 0;
  for await (const bytes of textBytes(source, encoding)) {
    if (used + bytes.length + 1 > held.length) held = grow(held, used, used + bytes.length + 1);
    held.set(bytes, used);
    used += bytes.length;
    const end = lastLineEnd(held, used, bytes.length);
    if (end === 0) {
      if (used > MAX_LINE) throw lineTooLong(source.name);
      continue;
    }
    yield { bytes: held, start: 0, end, unterminated: false };
    held.copyWithin(0, end, used);
    used -= end;
  }
  if (used === 0) return;
  held[used] = NEWLINE;
  yield { bytes: held, start: 0, end: used + 1, unterminated: true };
}

async function* textBytes(source: ByteSource, encoding: Encoding): AsyncGenerator<Uint8Array> {
  const wide = encoding.label.startsWith('utf-16');
  const decoder = new TextDecoder(encoding.label);
  const encoder = new TextEncoder();
  let seenLineEnd = false;
  for (let offset = encoding.markBytes; offset < source.size; ) {
    const bytes = await source.read(offset, CHUNK);
    if (bytes.length === 0) break;
    offset += bytes.length;
    const text = wide ? encoder.encode(decoder.decode(bytes, { stream: true })) : bytes;
    // Files of old Macintosh programs end their lines with a lone carriage return.
    if (!seenLineEnd && !text.includes(NEWLINE) && text.includes(13)) {
      yield text.map((byte) => (byte === 13 ? NEWLINE : byte));
    } else {
      seenLineEnd = true;
      yield text;
    }
  }
}

function lastLineEnd(bytes: Uint8Array, used: number, fresh: number): number {
  for (let i = used - 1; i >= used - fresh; i--) if (bytes[i] === NEWLINE) return i + 1;
  return 0;
}

function grow(bytes: Uint8Array, used: number, needed: number): Uint8Array<ArrayBuffer> {
  const larger = new Uint8Array(needed + CHUNK);
  larger.set(bytes.subarray(0, used));
  return larger;
}

function lineTooLong(name: string): ArcError {
  return new ArcError({
    code: 'line-too-long',
    what: `${name} has a line of more than ${MAX_LINE / 1024} KiB.`,
    expected: 'one row of numbers a line',
    todo: 'Export the log with one sample a line.',
  });
}
