import { ArcError } from '../../../core/index.js';
import type { ByteSource } from '../../types.js';
import { type ByteStream, sourceStream } from '../binary/byte-stream.js';
import { inflateStream } from '../binary/inflate-stream.js';

/** One file within an archive. */
export interface ZipEntry {
  name: string;
  /** A fresh stream of its unpacked bytes. */
  open(): Promise<() => ByteStream>;
}

const MAX_ENTRIES = 10_000;
const MAX_DIRECTORY = 16 * 1024 * 1024;
const DIRECTORY_END = 0x06054b50;
const DIRECTORY_END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const ENTRY = 0x02014b50;
const UNKNOWN_32 = 0xffffffff;

/**
 * Lists the entries of a ZIP archive by its directory at the end (APPNOTE 6.3, with the 64-bit
 * extension). Nothing is unpacked.
 *
 * @throws ArcError `damaged-file`, `encrypted`.
 */
export async function listZip(source: ByteSource): Promise<ZipEntry[]> {
  const { offset, length, count } = await findDirectory(source);
  if (count > MAX_ENTRIES || length > MAX_DIRECTORY)
    throw damaged(source.name, `lists ${count} entries`);
  const bytes = (await source.read(offset, length)).slice();
  const view = new DataView(bytes.buffer);
  const entries: ZipEntry[] = [];
  for (let at = 0; at + 46 <= bytes.length && entries.length < count; ) {
    if (view.getUint32(at, true) !== ENTRY) throw damaged(source.name, 'has a damaged directory');
    const nameLength = view.getUint16(at + 28, true);
    const extraLength = view.getUint16(at + 30, true);
    if (at + 46 + nameLength + extraLength > bytes.length) break;
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    if (view.getUint16(at + 8, true) & 1) throw encrypted(source.name, name);
    const place = entryPlace(view, at, at + 46 + nameLength, extraLength);
    const method = view.getUint16(at + 10, true);
    entries.push({ name, open: () => openEntry(source, name, method, place) });
    at += 46 + nameLength + extraLength + view.getUint16(at + 32, true);
  }
  return entries;
}

interface Place {
  offset: number;
  packed: number;
}

/** Sizes of 4 GiB and more stand in an extra field, in the order in which they are missing. */
function entryPlace(view: DataView, at: number, extra: number, extraLength: number): Place {
  const unpacked = view.getUint32(at + 24, true);
  let packed = view.getUint32(at + 20, true);
  let offset = view.getUint32(at + 42, true);
  for (let p = extra; p + 4 <= extra + extraLength; p += 4 + view.getUint16(p + 2, true)) {
    if (view.getUint16(p, true) !== 1) continue;
    let q = p + 4 + (unpacked === UNKNOWN_32 ? 8 : 0);
    const end = Math.min(extra + extraLength, p + 4 + view.getUint16(p + 2, true));
    if (packed === UNKNOWN_32 && q + 8 <= end) {
      packed = Number(view.getBigUint64(q, true));
      q += 8;
    }
    if (offset === UNKNOWN_32 && q + 8 <= end) offset = Number(view.getBigUint64(q, true));
  }
  return { offset, packed };
}

async function openEntry(
  source: ByteSource,
  name: string,
  method: number,
  { offset, packed }: Place,
): Promise<() => ByteStream> {
  const header = (await source.read(offset, 30)).slice();
  if (header.length < 30) throw damaged(source.name, `breaks off before “${name}”`);
  const view = new DataView(header.buffer);
  const start = offset + 30 + view.getUint16(26, true) + view.getUint16(28, true);
  if (method === 0) return () => sourceStream(source, start, packed);
  if (method === 8) return () => inflateStream(source, start, packed, 'none');
  throw damaged(source.name, `packs “${name}” by an unknown method (${method})`);
}

async function findDirectory(
  source: ByteSource,
): Promise<{ offset: number; length: number; count: number }> {
  const tailStart = Math.max(0, source.size - 65_557);
  const tail = (await source.read(tailStart, source.size - tailStart)).slice();
  const view = new DataView(tail.buffer);
  for (let at = tail.length - 22; at >= 0; at--) {
    if (view.getUint32(at, true) !== DIRECTORY_END) continue;
    const found = {
      count: view.getUint16(at + 10, true),
      length: view.getUint32(at + 12, true),
      offset: view.getUint32(at + 16, true),
    };
    const wide = at >= 20 && view.getUint32(at - 20, true) === LOCATOR_64;
    return wide ? await findDirectory64(source, Number(view.getBigUint64(at - 12, true))) : found;
  }
  throw damaged(source.name, 'is an archive without a directory: it breaks off');
}

async function findDirectory64(
  source: ByteSource,
  at: number,
): Promise<{ offset: number; length: number; count: number }> {
  const bytes = (await source.read(at, 56)).slice();
  const view = new DataView(bytes.buffer);
  if (bytes.length < 56 || view.getUint32(0, true) !== DIRECTORY_END_64) {
    throw damaged(source.name, 'has a damaged directory');
  }
  return {
    count: Number(view.getBigUint64(32, true)),
    length: Number(view.getBigUint64(40, true)),
    offset: Number(view.getBigUint64(48, true)),
  };
}

function damaged(fileName: string, what: string): ArcError {
  return new ArcError({
    code: 'damaged-file',
    what: `${fileName} ${what}.`,
    expected: 'an intact archive of NumPy arrays',
    todo: 'Copy the file again, or save it again with numpy.savez.',
  });
}

function encrypted(fileName: string, name: string): ArcError {
  return new ArcError({
    code: 'encrypted',
    what: `${fileName}: its entry “${name}” is encrypted.`,
    expected: 'an archive without a password',
    todo: 'Unpack it and save the arrays again.',
  });
}
