import { ArcError } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { ByteSource } from '../../types.js';
import { type ArrayColumn, numbersFrom } from '../binary/array-column.js';
import { arrayTable } from '../binary/array-table.js';
import { type ByteStream, sourceStream } from '../binary/byte-stream.js';
import { inflateStream } from '../binary/inflate-stream.js';
import { seriesOf } from '../binary/matrix-columns.js';
import { sizeOf } from '../binary/numbers.js';
import type { Scalar } from '../binary/stated-rate.js';
import type { LogTable } from '../table.js';
import { COMPRESSED, damagedMat, MATRIX, readTag } from './elements.js';
import { type MatArray, walkMatrix } from './matrix.js';

const HEADER = 128;
const MAX_ELEMENTS = 10_000;

/**
 * Opens a MATLAB file of level 5 (saved as v6 or v7), compressed or not, in either byte order. Numeric
 * variables and the numeric fields of structs become columns and lone numbers.
 *
 * @throws ArcError `damaged-file`, `no-series`.
 */
export async function openMat(source: ByteSource): Promise<LogTable> {
  const head = (await source.read(0, HEADER)).slice();
  if (head.length < HEADER) throw damagedMat(source.name, 'breaks off in its header');
  const little = head[126] === 0x49;
  const columns: ArrayColumn[] = [];
  const scalars: Scalar[] = [];
  const complex: string[] = [];
  let at = HEADER;
  for (let n = 0; at + 8 <= source.size; n++) {
    if (n >= MAX_ELEMENTS) throw damagedMat(source.name, `has more than ${MAX_ELEMENTS} variables`);
    const tag = await readTag(sourceStream(source, at, 8), little);
    if (tag === undefined) break;
    const start = at + 8;
    if (tag.type === COMPRESSED || tag.type === MATRIX) {
      if (start + tag.bytes > source.size) throw damagedMat(source.name, 'breaks off');
      // A plain element is walked from its own tag on, as a compressed one is after unpacking.
      const from = at;
      const open = (): ByteStream =>
        tag.type === COMPRESSED
          ? inflateStream(source, start, tag.bytes, 'zlib')
          : sourceStream(source, from, tag.bytes + 8);
      await collect(source.name, open, little, columns, scalars, complex);
    }
    at = start + tag.room;
  }
  if (columns.length === 0 && complex.length > 0) throw onlyComplex(source.name, complex);
  const notes =
    complex.length === 0
      ? []
      : [note('column-not-read', { columns: complex.slice(0, 8), why: 'complex' })];
  return arrayTable({ format: 'mat', fileName: source.name, columns, scalars, notes });
}

async function collect(
  fileName: string,
  open: () => ByteStream,
  little: boolean,
  columns: ArrayColumn[],
  scalars: Scalar[],
  complex: string[],
): Promise<void> {
  const stream = open();
  const tag = await readTag(stream, little);
  if (tag?.type !== MATRIX) return;
  const arrays: MatArray[] = [];
  await walkMatrix({ stream, little, fileName, arrays, complex }, tag.room, '', 0);
  for (const array of arrays) {
    if (array.count === 1)
      scalars.push({ name: array.name, value: await lone(open, array, little) });
    else columns.push(...columnsOf(array, open, little));
  }
}

function onlyComplex(fileName: string, names: readonly string[]): ArcError {
  return new ArcError({
    code: 'no-series',
    what: `${fileName} holds complex numbers only (${names.slice(0, 8).join(', ')}).`,
    expected: 'real numbers: volts and amperes over time',
    todo: 'Save the trace itself, not its spectrum.',
  });
}

async function lone(open: () => ByteStream, array: MatArray, little: boolean): Promise<number> {
  const stream = open();
  await stream.skip(array.start);
  const layout = { type: array.type, little, stride: sizeOf(array.type), rows: 1 };
  return (await numbersFrom(stream, layout).read(1))[0] ?? Number.NaN;
}

function columnsOf(array: MatArray, open: () => ByteStream, little: boolean): ArrayColumn[] {
  const size = sizeOf(array.type);
  return seriesOf(array.shape, false).map((series) => ({
    name: series.number === undefined ? array.name : `${array.name}[${series.number}]`,
    rows: series.rows,
    open: async () => {
      const stream = open();
      await stream.skip(array.start + series.start * size);
      return numbersFrom(stream, {
        type: array.type,
        little,
        stride: series.step * size,
        rows: series.rows,
      });
    },
  }));
}
