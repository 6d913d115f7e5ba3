import { blockDecoder, type PcmEncoding } from '../../pcm/index.js';
import type { DecodedSound, DecoderConfig, PacketDecoder } from '../../reader.js';

const WIDTHS: Readonly<Record<string, number>> = {
  u8: 1,
  s8: 1,
  s16: 2,
  s24: 3,
  s32: 4,
  f32: 4,
  f64: 8,
};

/** Plain samples inside MP4, QuickTime or Matroska (`pcm-s16be`, `alaw`, …). */
export async function startPcm(config: DecoderConfig): Promise<PacketDecoder> {
  const { channels, sampleRateHz, codec } = config;
  const { encoding, width, bigEndian } = storage(codec);
  const blockBytes = width * channels;
  const format = { encoding, channels, sampleRateHz, blockBytes, blockFrames: 1 };
  const decode = await blockDecoder(format, bigEndian);
  return {
    async push(packet): Promise<DecodedSound | undefined> {
      const frames = Math.floor(packet.length / blockBytes);
      if (frames === 0) return undefined;
      const out = new Float64Array(frames);
      const planes = Array.from({ length: channels }, (_, channel) => {
        decode(packet, channel, out);
        return Float32Array.from(out);
      });
      return { sampleRateHz, channels: planes };
    },
    flush: async () => undefined,
    close: () => {},
  };
}

function storage(codec: string): { encoding: PcmEncoding; width: number; bigEndian: boolean } {
  if (codec === 'alaw') return { encoding: 'a-law', width: 1, bigEndian: false };
  if (codec === 'ulaw') return { encoding: 'mu-law', width: 1, bigEndian: false };
  const name = codec.replace(/^pcm-/, '');
  const encoding = name.replace(/be$/, '');
  const width = WIDTHS[encoding];
  if (!width) throw new Error(`${codec} is not a PCM codec`);
  return { encoding: encoding as PcmEncoding, width, bigEndian: name.endsWith('be') };
}
