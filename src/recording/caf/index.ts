import { ArcError, type Note } from '../../core/index.js';
import { openPcm, type PcmData } from '../pcm/index.js';
import { checkedFormat, type StatedPcm } from '../pcm-checks.js';
import type { Reader } from '../reader.js';
import { hasAscii } from '../sniff.js';
import type { ByteSource, ReadOptions, Recording } from '../types.js';
import { type CafDescription, readCafChunks } from './chunks.js';

const FLOAT_FLAG = 1;
const LITTLE_ENDIAN_FLAG = 2;

/** Reader of Core Audio Format files with plain, A-law or µ-law samples. */
export const cafReader: Reader = {
  format: 'caf',
  title: 'CAF',
  sniff: (head) => hasAscii(head, 0, 'caff'),
  open: openCaf,
};

/**
 * @throws ArcError `caf-incomplete`, `unknown-codec`, `bad-sample-rate`, `bad-channel-count`,
 * `bad-sample-size`, and those of {@link openPcm}.
 */
async function openCaf(source: ByteSource, options: ReadOptions): Promise<Recording> {
  const { description, data } = await readCafChunks(source);
  const notes: Note[] = [];
  const { format, bigEndian } = checkedFormat(statedPcm(description), options, notes);
  const present = Math.max(0, source.size - data.offset);
  const known = data.declared >= 0 ? { declaredBytes: data.declared } : {};
  const dataBytes = data.declared >= 0 ? Math.min(present, data.declared) : present;
  const pcm: PcmData = { bigEndian, dataOffset: data.offset, dataBytes, ...known };
  return openPcm({ source, container: 'caf', format, data: pcm, notes }, options);
}

function statedPcm(description: CafDescription): StatedPcm {
  const { codec, flags, channels, sampleRateHz, bytesPerPacket } = description;
  const common = { container: 'CAF', channels, sampleRateHz, bits: description.bits };
  if (codec === 'alaw') return { ...common, kind: 'a-law', bits: 8 };
  if (codec === 'ulaw') return { ...common, kind: 'mu-law', bits: 8 };
  if (codec !== 'lpcm') throw unknownCodec(codec);
  // Samples stand in whole bytes; a packet is one frame.
  const bits = channels > 0 ? (8 * bytesPerPacket) / channels : 0;
  return {
    ...common,
    bits: Number.isInteger(bits) ? bits : 0,
    kind: flags & FLOAT_FLAG ? 'float' : 'signed',
    bigEndian: (flags & LITTLE_ENDIAN_FLAG) === 0,
  };
}

function unknownCodec(codec: string): ArcError {
  return new ArcError({
    code: 'unknown-codec',
    what: `The CAF file holds sound of the type “${codec}”.`,
    expected: 'plain integer or float samples, A-law or µ-law',
    todo: 'Convert it to PCM or to M4A.',
  });
}
