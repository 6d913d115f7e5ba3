import { ArcError } from '../../core/index.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';

/** The `desc` chunk of a CAF file. */
export interface CafDescription {
  sampleRateHz: number;
  codec: string;
  flags: number;
  bytesPerPacket: number;
  framesPerPacket: number;
  channels: number;
  bits: number;
}

/** What a CAF file holds; offsets are those of chunk bodies. */
export interface CafChunks {
  description: CafDescription;
  data: { offset: number; declared: number };
}

const MAX_CHUNKS = 10_000;

/**
 * Walks the chunks of a Core Audio Format file. A data chunk of size -1 goes on to the end.
 *
 * @throws ArcError `caf-incomplete`.
 */
export async function readCafChunks(source: ByteSource): Promise<CafChunks> {
  let description: CafDescription | undefined;
  let data: CafChunks['data'] | undefined;
  let at = 8;
  for (let count = 0; at + 12 <= source.size && count < MAX_CHUNKS; count++) {
    const head = (await source.read(at, 12)).slice();
    const declared = Number(new DataView(head.buffer).getBigInt64(4));
    const body = at + 12;
    if (hasAscii(head, 0, 'desc')) description = parse((await source.read(body, 32)).slice());
    // Four bytes of edit count stand before the samples.
    if (hasAscii(head, 0, 'data')) data = { offset: body + 4, declared: declared - 4 };
    if (declared < 0 || (description && data)) break;
    at = body + declared;
  }
  if (!description || !data) throw incomplete(source.name, description ? 'data' : 'desc');
  return { description, data };
}

function parse(bytes: Uint8Array): CafDescription | undefined {
  if (bytes.length < 32) return undefined;
  const view = new DataView(bytes.buffer);
  return {
    sampleRateHz: view.getFloat64(0),
    codec: String.fromCharCode(...bytes.subarray(8, 12)),
    flags: view.getUint32(12),
    bytesPerPacket: view.getUint32(16),
    framesPerPacket: view.getUint32(20),
    channels: view.getUint32(24),
    bits: view.getUint32(28),
  };
}

function incomplete(name: string, chunk: string): ArcError {
  return new ArcError({
    code: 'caf-incomplete',
    what: `${name} starts as a CAF file but has no whole “${chunk}” chunk.`,
    expected: 'a CAF file with a description and a data chunk',
    todo: 'The file is damaged or cut off; record or copy it again.',
  });
}
