import { ArcError, type Note } from '../../core/index.js';
import { openPcm, type PcmData, type PcmFormat } from '../pcm/index.js';
import { checkedFormat } from '../pcm-checks.js';
import type { Reader } from '../reader.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { readExtended } from './extended.js';

/** Reader of AIFF and AIFF-C files with plain, A-law or µ-law samples. */
export const aiffReader: Reader = {
  format: 'aiff',
  title: 'AIFF',
  sniff: (head) =>
    hasAscii(head, 0, 'FORM') && (hasAscii(head, 8, 'AIFF') || hasAscii(head, 8, 'AIFC')),
  open: openAiff,
};

interface Common {
  channels: number;
  frames: number;
  bits: number;
  sampleRateHz: number;
  /** AIFF-C compression type; `NONE` in plain AIFF. */
  codec: string;
}

/** A header made of a great many empty chunks must end in an error, not in hours of walking. */
const MAX_CHUNKS = 10_000;

/**
 * @throws ArcError `aiff-incomplete`, `unknown-codec`, `bad-sample-rate`, `bad-channel-count`,
 * `bad-sample-size`, and those of {@link openPcm}.
 */
async function openAiff(source: ByteSource, options: ReadOptions): Promise<Recording> {
  let common: Common | undefined;
  let sound: { offset: number; bytes: number } | undefined;
  let at = 12;
  for (let count = 0; at + 8 <= source.size && count < MAX_CHUNKS; count++) {
    const head = (await source.read(at, 8)).slice();
    const size = new DataView(head.buffer).getUint32(4);
    if (hasAscii(head, 0, 'COMM')) {
      common = readCommon((await source.read(at + 8, Math.min(size, 64))).slice());
    } else if (hasAscii(head, 0, 'SSND')) {
      sound = await soundChunk(source, at + 8, size);
      if (size === 0 || size === 0xffffffff) break;
    }
    if (common && sound) break;
    at += 8 + size + (size % 2);
  }
  if (!common || !sound) throw incomplete(source.name, common ? 'SSND' : 'COMM');
  const notes: Note[] = [];
  const { format, bigEndian } = formatOf(common, options, notes);
  const declaredBytes = Math.max(sound.bytes, common.frames * format.blockBytes);
  const dataBytes = Math.min(sound.bytes || declaredBytes, source.size - sound.offset);
  const data: PcmData = { bigEndian, dataOffset: sound.offset, dataBytes, declaredBytes };
  return openPcm({ source, container: 'aiff', format, data, notes }, options);
}

async function soundChunk(
  source: ByteSource,
  body: number,
  size: number,
): Promise<{ offset: number; bytes: number }> {
  const bytes = (await source.read(body, 8)).slice();
  const skip = bytes.length < 4 ? 0 : new DataView(bytes.buffer).getUint32(0);
  return { offset: body + 8 + skip, bytes: Math.max(0, size - 8 - skip) };
}

function readCommon(bytes: Uint8Array): Common | undefined {
  if (bytes.length < 18) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return {
    channels: view.getUint16(0),
    frames: view.getUint32(2),
    bits: view.getUint16(6),
    sampleRateHz: readExtended(bytes, 8),
    codec: bytes.length < 22 ? 'NONE' : String.fromCharCode(...bytes.subarray(18, 22)),
  };
}

function formatOf(
  common: Common,
  options: ReadOptions,
  notes: Note[],
): { format: PcmFormat; bigEndian: boolean } {
  const stated = { ...common, container: 'AIFF' };
  const codec = common.codec;
  const float = { fl32: 32, FL32: 32, fl64: 64, FL64: 64 }[codec];
  if (float) return checkedFormat({ ...stated, bits: float, kind: 'float' }, options, notes);
  if (codec === 'alaw' || codec === 'ALAW') {
    return checkedFormat({ ...stated, kind: 'a-law' }, options, notes);
  }
  if (codec === 'ulaw' || codec === 'ULAW') {
    return checkedFormat({ ...stated, kind: 'mu-law' }, options, notes);
  }
  if (codec === 'raw ') return checkedFormat({ ...stated, kind: 'unsigned' }, options, notes);
  if (codec === 'sowt') {
    return checkedFormat({ ...stated, kind: 'signed', bigEndian: false }, options, notes);
  }
  if (!['NONE', 'twos', 'in24', 'in32'].includes(codec)) throw unknownCodec(codec);
  return checkedFormat({ ...stated, kind: 'signed' }, options, notes);
}

function unknownCodec(codec: string): ArcError {
  return new ArcError({
    code: 'unknown-codec',
    what: `The AIFF file holds sound of the type “${codec}”.`,
    expected: 'plain integer or float samples, A-law or µ-law',
    todo: 'Convert it to PCM.',
  });
}

function incomplete(name: string, chunk: string): ArcError {
  return new ArcError({
    code: 'aiff-incomplete',
    what: `${name} starts as an AIFF file but has no whole “${chunk}” chunk.`,
    expected: 'an AIFF file with a common and a sound chunk',
    todo: 'The file is damaged or cut off; record or copy it again.',
  });
}
