import type { ByteStream } from '../binary/byte-stream.js';
import { type NumberType, readNumbers, sizeOf } from '../binary/numbers.js';
import { damagedMat, MATRIX, numberType, readSmall, readTag } from './elements.js';

/** A numeric array within a MAT file. */
export interface MatArray {
  /** `name`, or `struct.field`. */
  name: string;
  shape: number[];
  type: NumberType;
  /** Place of the first value within its stream. */
  start: number;
  count: number;
}

const STRUCT = 2;
const FIRST_NUMERIC = 6;
const LAST_NUMERIC = 15;
const COMPLEX = 0x08;
const MAX_NAME = 4096;
const MAX_FIELDS = 4096;
const MAX_DEPTH = 6;

/** What one walk needs to know. */
export interface MatWalk {
  stream: ByteStream;
  little: boolean;
  fileName: string;
  arrays: MatArray[];
  /** Names of arrays of complex numbers, which are no trace. */
  complex: string[];
}

/**
 * Collects the numeric arrays of a matrix element, structs included; the stream stands behind its tag
 * and afterwards behind its data. Text, cells, objects and sparse arrays are passed over.
 *
 * @param room bytes of the element
 * @param prefix name of the struct around it, with the dot
 * @throws ArcError `damaged-file`.
 */
export async function walkMatrix(
  walk: MatWalk,
  room: number,
  prefix: string,
  depth: number,
): Promise<void> {
  const { stream, little, fileName } = walk;
  const end = stream.position + room;
  const leave = (): Promise<void> => stream.skip(Math.max(0, end - stream.position));
  if (room === 0) return;
  const flags = await readSmall(stream, little, 64, fileName);
  const word = readNumbers(flags.data, 'u4', little, 1)[0] ?? 0;
  const kind = word & 0xff;
  const dims = await readSmall(stream, little, 256, fileName);
  const shape = [...readNumbers(dims.data, 'i4', little, Math.floor(dims.data.length / 4))];
  const own = await readSmall(stream, little, MAX_NAME, fileName);
  const text = new TextDecoder('latin1').decode(own.data);
  const name = text === '' && prefix !== '' ? prefix.replace(/\.$/, '') : `${prefix}${text}`;
  if (kind === STRUCT && depth < MAX_DEPTH && shape.every((side) => side === 1)) {
    await walkFields(walk, name, depth);
  } else if (kind >= FIRST_NUMERIC && kind <= LAST_NUMERIC) {
    if (((word >> 8) & COMPLEX) === 0) await noteArray(walk, name, shape);
    else walk.complex.push(name);
  }
  await leave();
}

async function walkFields(walk: MatWalk, name: string, depth: number): Promise<void> {
  const { stream, little, fileName } = walk;
  const lengthElement = await readSmall(stream, little, 8, fileName);
  const length = readNumbers(lengthElement.data, 'i4', little, 1)[0] ?? 0;
  if (length < 1 || length > MAX_NAME) throw damagedMat(fileName, 'has an absurd struct');
  const names = await readSmall(stream, little, length * MAX_FIELDS, fileName);
  for (let at = 0; at + length <= names.data.length; at += length) {
    const field = new TextDecoder('latin1')
      .decode(names.data.subarray(at, at + length))
      .replace(/\0.*$/s, '');
    const tag = await readTag(stream, little);
    if (tag === undefined) throw damagedMat(fileName, 'breaks off');
    if (tag.type === MATRIX) await walkMatrix(walk, tag.room, `${name}.${field}.`, depth + 1);
    else await stream.skip(tag.room);
  }
}

async function noteArray(walk: MatWalk, name: string, shape: number[]): Promise<void> {
  const { stream, little, fileName, arrays } = walk;
  const tag = await readTag(stream, little);
  if (tag === undefined) throw damagedMat(fileName, 'breaks off');
  const type = numberType(tag);
  if (type === undefined) return;
  const count = Math.floor(tag.bytes / sizeOf(type));
  const product = shape.reduce((all, side) => all * side, 1);
  if (product !== count) {
    throw damagedMat(fileName, `says that “${name}” has ${product} values, but holds ${count}`);
  }
  arrays.push({ name, shape, type, start: stream.position, count });
}
