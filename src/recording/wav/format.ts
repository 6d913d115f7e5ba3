import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { PcmFormat } from '../pcm/index.js';
import { checkRate } from '../pcm-checks.js';

const TAGS = {
  pcm: 1,
  msAdpcm: 2,
  float: 3,
  aLaw: 6,
  muLaw: 7,
  imaAdpcm: 0x11,
  extensible: 0xfffe,
};
/** Names for the message about a codec that we don't read; from the registered WAVE format tags. */
const OTHER_CODECS: Readonly<Record<number, string>> = {
  [TAGS.msAdpcm]: 'Microsoft ADPCM',
  49: 'GSM 6.10',
  80: 'MPEG layer 1 or 2',
  85: 'MP3 inside WAV',
  255: 'AAC inside WAV',
  352: 'Windows Media',
  353: 'Windows Media',
  8192: 'AC-3',
};
/** Last 14 bytes of the sub-format identifiers that carry a plain format tag in their first two. */
const TAG_GUID = [0, 0, 0, 0, 0x10, 0, 0x80, 0, 0, 0xaa, 0, 0x38, 0x9b, 0x71];
const MAX_CHANNELS = 256;

/**
 * Reads the `fmt ` chunk. `statedRateHz` serves where the file states a rate of 0.
 *
 * @throws ArcError `wav-format-cut`, `wav-unknown-codec`, `bad-sample-rate`, `bad-channel-count`,
 * `bad-sample-size`, `contradicting-sample-rate`.
 */
export function parseWavFormat(
  bytes: Uint8Array,
  bigEndian: boolean,
  statedRateHz: number | undefined,
  notes: Note[],
): PcmFormat {
  if (bytes.length < 14) throw cutFormat(bytes.length);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const u16 = (at: number): number => (at + 2 <= bytes.length ? view.getUint16(at, !bigEndian) : 0);
  const channels = u16(2);
  if (channels < 1 || channels > MAX_CHANNELS) throw badChannels(channels);
  const sampleRateHz = checkRate(view.getUint32(4, !bigEndian), statedRateHz, 'WAV', notes);
  const tag = u16(0) === TAGS.extensible ? extensibleTag(bytes, bigEndian) : u16(0);
  const stated = { channels, blockBytes: u16(12), bits: u16(14), samplesPerBlock: u16(18) };
  return { channels, sampleRateHz, ...storage(tag, stated, notes) };
}

interface Stated {
  channels: number;
  blockBytes: number;
  bits: number;
  samplesPerBlock: number;
}

function storage(
  tag: number,
  stated: Stated,
  notes: Note[],
): Pick<PcmFormat, 'encoding' | 'blockBytes' | 'blockFrames'> {
  const { channels, bits } = stated;
  if (tag === TAGS.imaAdpcm) return imaStorage(stated);
  if (tag === TAGS.aLaw) return { encoding: 'a-law', blockBytes: channels, blockFrames: 1 };
  if (tag === TAGS.muLaw) return { encoding: 'mu-law', blockBytes: channels, blockFrames: 1 };
  if (tag !== TAGS.pcm && tag !== TAGS.float) throw unknownCodec(tag);
  const width = sampleBytes(tag, stated, notes);
  const encoding =
    tag === TAGS.float
      ? ({ 4: 'f32', 8: 'f64' } as const)[width]
      : ({ 1: 'u8', 2: 's16', 3: 's24', 4: 's32' } as const)[width];
  if (!encoding) throw badBits(bits, tag === TAGS.float);
  return { encoding, blockBytes: width * channels, blockFrames: 1 };
}

/** A frame may be wider than the bits need (24 bits in 4 bytes); a frame that can't be is ignored. */
function sampleBytes(tag: number, { channels, blockBytes, bits }: Stated, notes: Note[]): number {
  if (bits < 1 || bits > 64) throw badBits(bits, tag === TAGS.float);
  const needed = Math.ceil(bits / 8);
  const width = blockBytes / channels;
  if (width === needed) return needed;
  if (tag === TAGS.pcm && width === 4 && needed === 3) {
    notes.push(note('wav-wide-samples'));
    return 4;
  }
  const usedBytes = needed * channels;
  notes.push(note('wav-frame-size', { blockBytes, channels, bits, usedBytes }));
  return needed;
}

function imaStorage({ channels, blockBytes, bits }: Stated): ReturnType<typeof storage> {
  const header = 4 * channels;
  if (channels > 2 || bits !== 4 || blockBytes <= header || (blockBytes - header) % header !== 0) {
    throw new ArcError({
      code: 'bad-sample-size',
      what: `The file states IMA ADPCM with ${channels} channels, ${bits} bits and blocks of ${blockBytes} bytes.`,
      expected: '1 or 2 channels, 4 bits, and blocks of a header and whole words',
      todo: 'Export the recording as 16-bit PCM.',
    });
  }
  // One sample in the header, then 8 in each 4-byte word of each channel.
  const blockFrames = 1 + ((blockBytes - header) / header) * 8;
  return { encoding: 'ima-adpcm', blockBytes, blockFrames };
}

function extensibleTag(bytes: Uint8Array, bigEndian: boolean): number {
  if (bytes.length < 40) throw cutFormat(bytes.length);
  if (!TAG_GUID.every((byte, i) => bytes[26 + i] === byte)) {
    // Big-endian files turn the numeric parts of the identifier round; its last 8 bytes stay.
    if (!bigEndian || !TAG_GUID.slice(6).every((byte, i) => bytes[32 + i] === byte)) {
      throw unknownCodec(0xfffe);
    }
    return new DataView(bytes.buffer, bytes.byteOffset).getUint32(24);
  }
  return bytes[24]! | (bytes[25]! << 8);
}

function cutFormat(length: number): ArcError {
  return new ArcError({
    code: 'wav-format-cut',
    what: `The format description of the WAV file has only ${length} bytes.`,
    expected: 'at least 14 bytes, 40 for the extensible form',
    todo: 'The file is damaged or cut off; record or copy it again.',
  });
}

function unknownCodec(tag: number): ArcError {
  const name = OTHER_CODECS[tag] ?? 'an unknown codec';
  return new ArcError({
    code: 'wav-unknown-codec',
    what: `The WAV file holds ${name} (format tag 0x${tag.toString(16).padStart(4, '0')}).`,
    expected: 'PCM of 8, 16, 24 or 32 bits, float of 32 or 64 bits, A-law, µ-law or IMA ADPCM',
    todo: 'Convert it to PCM.',
  });
}

function badChannels(channels: number): ArcError {
  return new ArcError({
    code: 'bad-channel-count',
    what: `The file states ${channels} channels.`,
    expected: `1 to ${MAX_CHANNELS} channels`,
    todo: 'The file is damaged; export the recording again.',
  });
}

function badBits(bits: number, float: boolean): ArcError {
  return new ArcError({
    code: 'bad-sample-size',
    what: `The file states ${float ? 'float' : 'integer'} samples of ${bits} bits.`,
    expected: float ? '32 or 64 bits' : '1 to 32 bits',
    todo: 'Export the recording as 16-bit PCM.',
  });
}
