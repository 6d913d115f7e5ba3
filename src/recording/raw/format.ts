import { ArcError } from '../../core/index.js';
import type { PcmEncoding } from '../pcm/format.js';

/** How bare samples lie in a file that has no header. */
export interface RawFormat {
  encoding: Exclude<PcmEncoding, 'ima-adpcm'>;
  bigEndian: boolean;
  /** Interleaved channels. */
  channels: number;
  /** Bytes before the first sample. */
  skipBytes: number;
}

const ENCODINGS: Record<string, RawFormat['encoding']> = {
  u8: 'u8',
  s8: 's8',
  s16: 's16',
  s24: 's24',
  s32: 's32',
  f32: 'f32',
  f64: 'f64',
  alaw: 'a-law',
  mulaw: 'mu-law',
};
const LAYOUT = /^(u8|s8|s16|s24|s32|f32|f64|alaw|mulaw)(le|be)?(?::(\d{1,4}))?(?:\+(\d{1,12}))?$/;

/**
 * Reads a layout such as `s16le`, `f64le:2` (two channels) or `s16be:2+44` (44 bytes to pass over).
 *
 * @throws ArcError `bad-raw-format`.
 */
export function parseRawFormat(text: string): RawFormat {
  const [, name = '', order, channels = '1', skip = '0'] =
    LAYOUT.exec(text.trim().toLowerCase()) ?? [];
  const encoding = ENCODINGS[name];
  const wide = /^[sf](16|24|32|64)$/.test(name);
  const count = Number(channels);
  if (encoding === undefined || wide !== (order !== undefined) || count < 1 || count > 1024) {
    throw new ArcError({
      code: 'bad-raw-format',
      what: `The layout “${text}” is not understood.`,
      expected:
        'u8, s8, alaw, mulaw, or s16, s24, s32, f32, f64 with le or be, then :channels and +bytes to skip, such as s16le:2',
      todo: 'Correct the layout; a recorder that writes bare samples says which it uses.',
    });
  }
  return { encoding, bigEndian: order === 'be', channels: count, skipBytes: Number(skip) };
}

/** Bytes of one sample. */
export function rawSampleBytes(encoding: RawFormat['encoding']): number {
  const bits = /\d+$/.exec(encoding)?.[0];
  return bits === undefined ? 1 : Number(bits) / 8;
}
