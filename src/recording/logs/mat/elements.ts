import { ArcError } from '../../../core/index.js';
import type { ByteStream } from '../binary/byte-stream.js';
import type { NumberType } from '../binary/numbers.js';

/** Data types of MAT-file elements (MATLAB MAT-File Format, level 5). */
export const MATRIX = 14;
export const COMPRESSED = 15;
const NUMBER_TYPES: Record<number, NumberType> = {
  1: 'i1',
  2: 'u1',
  3: 'i2',
  4: 'u2',
  5: 'i4',
  6: 'u4',
  7: 'f4',
  9: 'f8',
  12: 'i8',
  13: 'u8',
};

/** The head of an element. The stream stands at its data. */
export interface ElementTag {
  type: number;
  bytes: number;
  /** Bytes of data and padding that follow. */
  room: number;
}

/** How numbers of an element are stored; undefined for text and containers. */
export function numberType(tag: ElementTag): NumberType | undefined {
  return NUMBER_TYPES[tag.type];
}

/** Reads the next tag, in its long or its short form; undefined at the end of the stream. */
export async function readTag(
  stream: ByteStream,
  little: boolean,
): Promise<ElementTag | undefined> {
  const first = (await stream.read(4)).slice();
  if (first.length < 4) return undefined;
  const word = new DataView(first.buffer).getUint32(0, little);
  if (word >>> 16 !== 0) return { type: word & 0xffff, bytes: word >>> 16, room: 4 };
  const second = (await stream.read(4)).slice();
  if (second.length < 4) return undefined;
  const bytes = new DataView(second.buffer).getUint32(0, little);
  const padded = word === COMPRESSED ? bytes : Math.ceil(bytes / 8) * 8;
  return { type: word, bytes, room: padded };
}

/**
 * Reads a small element whole, padding included.
 *
 * @throws ArcError `damaged-file` when it breaks off or is longer than `limit`.
 */
export async function readSmall(
  stream: ByteStream,
  little: boolean,
  limit: number,
  fileName: string,
): Promise<{ tag: ElementTag; data: Uint8Array }> {
  const tag = await readTag(stream, little);
  if (tag === undefined || tag.bytes > limit) {
    throw damagedMat(fileName, tag === undefined ? 'breaks off' : 'has an absurd header');
  }
  const data = (await stream.read(tag.room)).slice(0, tag.bytes);
  if (data.length < tag.bytes) throw damagedMat(fileName, 'breaks off');
  return { tag, data };
}

export function damagedMat(fileName: string, what: string): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${fileName} ${what}.`,
    expected: 'an intact MATLAB file',
    todo: 'Copy the file again, or save it again in MATLAB.',
  });
}
