import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { DecoderConfig } from '../reader.js';
import type { CodecInfo } from '../types.js';
import { vorbisLongBlock } from './decoders/index.js';

const LOSSLESS = ['flac', 'alac'];

/** What the codec does to the sound, as far as its name and headers tell. */
export function codecInfo(config: DecoderConfig, rateHz: number): CodecInfo {
  const { codec } = config;
  const lossless = LOSSLESS.includes(codec) || codec.startsWith('pcm-');
  if (lossless) return { name: codec, lossy: false };
  const frameSamples = lossyFrame(config, rateHz);
  return { name: codec, lossy: true, ...(frameSamples ? { frameSamples } : {}) };
}

/** Frame lengths by the codecs' standards: ISO/IEC 14496-3, 11172-3; RFC 6716; Vorbis I; RFC 4867. */
function lossyFrame(config: DecoderConfig, rateHz: number): number | undefined {
  switch (config.codec) {
    case 'aac':
      return rateHz > config.sampleRateHz * 1.5 ? 2048 : 1024;
    case 'mp3':
      return rateHz < 32_000 ? 576 : 1152;
    case 'opus':
      return Math.round(rateHz * 0.02);
    case 'vorbis':
      return vorbisLongBlock(config.description);
    case 'amr-nb':
    case 'amr-wb':
      return Math.round(rateHz * 0.02);
    default:
      return undefined;
  }
}

/** One note on a lossy codec; empty for others. */
export function codecNote(codec: CodecInfo, rateHz: number): Note[] {
  if (!codec.lossy) return [];
  const frameSamples = codec.frameSamples || null;
  return [note('lossy-codec', { codec: codec.name, frameSamples, sampleRateHz: rateHz })];
}
