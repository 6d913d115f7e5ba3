import { ArcError } from '../../../core/index.js';
import type { ByteStream } from '../binary/byte-stream.js';
import type { NumberType } from '../binary/numbers.js';

/** One number of an item: its name (in structured arrays), type and place within the item. */
export interface NpyField {
  name?: string;
  type: NumberType;
  little: boolean;
  offset: number;
}

/** What the header of an `.npy` file says (format of NumPy, NEP 1). */
export interface NpyHeader {
  fields: NpyField[];
  itemBytes: number;
  fortranOrder: boolean;
  shape: number[];
}

const MAX_HEADER = 64 * 1024;
const TYPE = /^([<>|=])([fiub])(\d)$/;

/**
 * Reads the header; the stream then stands at the first value. Undefined for arrays that hold no plain
 * numbers (text, Python objects, complex numbers).
 *
 * @throws ArcError `damaged-file`.
 */
export async function readNpyHeader(
  stream: ByteStream,
  fileName: string,
): Promise<NpyHeader | undefined> {
  const lead = (await stream.read(10)).slice();
  const major = lead[6] ?? 0;
  if (lead.length < 10 || lead[0] !== 0x93 || major < 1 || major > 3) {
    throw damaged(fileName, 'has no NumPy header');
  }
  let length = (lead[8] ?? 0) | ((lead[9] ?? 0) << 8);
  if (major > 1) {
    const rest = await stream.read(2);
    length += ((rest[0] ?? 0) << 16) + (rest[1] ?? 0) * 2 ** 24;
  }
  if (length > MAX_HEADER) throw damaged(fileName, `has a NumPy header of ${length} bytes`);
  const text = new TextDecoder('latin1').decode(await stream.read(length));
  return parseHeader(text, fileName);
}

function parseHeader(text: string, fileName: string): NpyHeader | undefined {
  const order = /'fortran_order'\s*:\s*(True|False)/.exec(text)?.[1];
  const shape = /'shape'\s*:\s*\(([^)]*)\)/.exec(text)?.[1];
  const plain = /'descr'\s*:\s*'([^']*)'/.exec(text)?.[1];
  const structured = /'descr'\s*:\s*\[(.*?)\]\s*,\s*'/s.exec(text)?.[1];
  if (order === undefined || shape === undefined || (plain ?? structured) === undefined) {
    throw damaged(fileName, `has a NumPy header that cannot be read (“${text.slice(0, 60)}”)`);
  }
  const sides = shape
    .split(',')
    .filter((side) => side.trim() !== '')
    .map((side) => Number.parseInt(side, 10));
  const parsed = plain !== undefined ? plainFields(plain) : structuredFields(structured ?? '');
  return parsed && { ...parsed, fortranOrder: order === 'True', shape: sides };
}

type Fields = Pick<NpyHeader, 'fields' | 'itemBytes'>;

function plainFields(descr: string): Fields | undefined {
  const field = numberField(descr);
  return field && { fields: [{ ...field.field, offset: 0 }], itemBytes: field.bytes };
}

/** `('t', '<f8'), ('U', '<f4')`; a field of another kind takes its room and gives no series. */
function structuredFields(list: string): Fields | undefined {
  const fields: NpyField[] = [];
  let offset = 0;
  const items = list.match(/\('[^']*',\s*'[^']*'\s*(,[^)]*\))?\)/g) ?? [];
  for (const item of items) {
    const [, name, descr, repeat] = /\('([^']*)',\s*'([^']*)'\s*(,)?/.exec(item) ?? [];
    const bytes = itemSize(descr ?? '');
    if (name === undefined || descr === undefined || bytes === undefined || repeat)
      return undefined;
    const found = numberField(descr);
    if (found !== undefined && name !== '') fields.push({ ...found.field, name, offset });
    offset += bytes;
  }
  return fields.length > 0 ? { fields, itemBytes: offset } : undefined;
}

function numberField(
  descr: string,
): { field: Omit<NpyField, 'offset'>; bytes: number } | undefined {
  const [, order, kind, digits] = TYPE.exec(descr) ?? [];
  if (kind === undefined || digits === undefined) return undefined;
  const type = `${kind === 'b' ? 'u' : kind}${digits}`;
  if (!/^(f[248]|[iu][1248])$/.test(type)) return undefined;
  return { field: { type: type as NumberType, little: order !== '>' }, bytes: Number(digits) };
}

function itemSize(descr: string): number | undefined {
  const [, kind, digits] = /^[<>|=]([fiubcSVUMm])(\d+)/.exec(descr) ?? [];
  if (kind === undefined || digits === undefined || Number(digits) > 65_536) return undefined;
  return kind === 'U' ? 4 * Number(digits) : Number(digits);
}

function damaged(fileName: string, what: string): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${fileName} ${what}.`,
    expected: 'an array saved by NumPy',
    todo: 'Save the array again with numpy.save or numpy.savez.',
  });
}
