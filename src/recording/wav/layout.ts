import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { PcmData } from '../pcm/index.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';

/** Where things lie in a WAV file, after every declared size was held against what is there. */
export interface WavLayout extends PcmData {
  /** Bytes of the `fmt ` chunk. */
  format: Uint8Array;
  notes: Note[];
}

interface Walk {
  source: ByteSource;
  bigEndian: boolean;
  format?: Uint8Array;
  data?: { offset: number; declared: number };
  /** Data size of the `ds64` chunk, in bytes. */
  longData?: number;
  factFrames?: number;
  notes: Note[];
}

/** A header made of a great many empty chunks must end in an error, not in hours of walking. */
const MAX_CHUNKS = 10_000;
const MAX_FORMAT_BYTES = 4096;
const UNKNOWN_SIZE = 0xffffffff;
const KNOWN_CHUNKS =
  'fmt |data|fact|LIST|JUNK|PAD |bext|iXML|cue |smpl|inst|id3 |ID3 |FLLR|PEAK|cart|axml|chna|ds64|INFO|_PMX|levl';

/**
 * Walks the chunks of a WAV file up to its sound (and beyond, where the format stands behind it).
 * Nothing is allocated from a declared size, and chunks after the sound are left alone.
 *
 * @throws ArcError `wav-no-format`, `wav-no-data`, `wav-too-many-chunks`.
 */
export async function findWavLayout(source: ByteSource): Promise<WavLayout> {
  const head = await source.read(0, 12);
  const walk: Walk = { source, bigEndian: hasAscii(head, 0, 'RIFX'), notes: [] };
  let at = 12;
  for (let count = 0; at + 8 <= source.size; count++) {
    if (count === MAX_CHUNKS) throw tooManyChunks(source.name);
    const next = await readChunk(walk, at);
    if (walk.format && walk.data) break;
    if (next === undefined) break;
    at = next;
  }
  if (!walk.format) throw missing(source.name, 'fmt ', 'wav-no-format', 'what its samples are');
  if (!walk.data) throw missing(source.name, 'data', 'wav-no-data', 'any sound');
  return settleSize(walk, walk.format, walk.data);
}

/** Reads one chunk head; answers where the next one starts, or undefined at the end. */
async function readChunk(walk: Walk, at: number): Promise<number | undefined> {
  const { source, bigEndian } = walk;
  const head = (await source.read(at, 8)).slice();
  const id = ascii(head, 0);
  const size = view(head).getUint32(4, !bigEndian);
  const body = at + 8;
  if (id === 'data' && !walk.data) {
    walk.data = { offset: body, declared: size };
    if (size === UNKNOWN_SIZE && walk.longData) return nextChunk(walk, body, walk.longData);
    return size === 0 || size === UNKNOWN_SIZE ? undefined : nextChunk(walk, body, size);
  }
  if (id === 'fmt ' && !walk.format) {
    walk.format = (await source.read(body, Math.min(size, MAX_FORMAT_BYTES))).slice();
  }
  if (id === 'ds64') {
    const bytes = await source.read(body, Math.min(size, 24));
    if (bytes.length >= 16) walk.longData = Number(view(bytes).getBigUint64(8, true));
  }
  if (id === 'fact') {
    const bytes = await source.read(body, Math.min(size, 4));
    if (bytes.length === 4) walk.factFrames = view(bytes).getUint32(0, !bigEndian);
  }
  return nextChunk(walk, body, size);
}

/** Chunks are padded to even length, but not every writer does it. */
async function nextChunk(walk: Walk, body: number, size: number): Promise<number | undefined> {
  const end = body + size;
  if (end >= walk.source.size) return undefined;
  if (size % 2 === 0) return end;
  const bytes = (await walk.source.read(end, 9)).slice();
  const padded = isKnown(ascii(bytes, 1));
  if (padded || !isKnown(ascii(bytes, 0))) return end + 1;
  walk.notes.push(note('wav-unpadded-chunk'));
  return end;
}

async function settleSize(
  walk: Walk,
  format: Uint8Array,
  data: { offset: number; declared: number },
): Promise<WavLayout> {
  const { source, notes, bigEndian } = walk;
  const present = source.size - data.offset;
  const fact = walk.factFrames === undefined ? {} : { factFrames: walk.factFrames };
  const layout = { format, bigEndian, dataOffset: data.offset, notes, ...fact };
  const long = data.declared === UNKNOWN_SIZE ? walk.longData : undefined;
  const declared = long || data.declared;
  if (declared === UNKNOWN_SIZE) return { ...layout, dataBytes: present, ...sizeUnknown(notes) };
  if (declared === 0) {
    const next = (await source.read(data.offset, 4)).slice();
    if (present === 0 || isKnown(ascii(next, 0))) return { ...layout, dataBytes: 0 };
    return { ...layout, dataBytes: present, ...sizeUnknown(notes) };
  }
  return { ...layout, dataBytes: Math.min(present, declared), declaredBytes: declared };
}

function sizeUnknown(notes: Note[]): object {
  notes.push(note('wav-size-missing'));
  return {};
}

function isKnown(id: string): boolean {
  return id.length === 4 && KNOWN_CHUNKS.split('|').includes(id);
}

function ascii(bytes: Uint8Array, offset: number): string {
  return String.fromCharCode(...bytes.subarray(offset, offset + 4));
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function missing(name: string, chunk: string, code: string, lacks: string): ArcError {
  return new ArcError({
    code,
    what: `${name} starts as a WAV file but never says ${lacks === 'any sound' ? 'where its sound is' : lacks} (no “${chunk}” chunk).`,
    expected: 'a WAV file with a format and a data chunk',
    todo: 'The file is damaged or cut off; record or copy it again.',
  });
}

function tooManyChunks(name: string): ArcError {
  return new ArcError({
    code: 'wav-too-many-chunks',
    what: `${name} holds more than ${MAX_CHUNKS} chunks before its sound.`,
    expected: 'a WAV file with a handful of chunks',
    todo: 'The file is damaged; record or copy it again.',
  });
}
