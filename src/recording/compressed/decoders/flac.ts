import { quietly } from '../../console-quiet.js';
import type { DecodedSound, DecoderConfig, PacketDecoder } from '../../reader.js';
import { decoded } from './common.js';

/** FLAC by `@wasm-audio-decoders/flac` (libFLAC). */
export async function startFlac(_config: DecoderConfig): Promise<PacketDecoder> {
  const { FLACDecoder } = await import('@wasm-audio-decoders/flac');
  const decoder = new FLACDecoder();
  await decoder.ready;
  return {
    async push(packet): Promise<DecodedSound | undefined> {
      // Decodes before it returns its promise, so the silence covers it.
      const sound = await quietly(() => decoder.decodeFrames([packet]));
      rescale(sound.channelData, sound.bitDepth);
      return decoded(sound);
    },
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}

/**
 * The package divides by the largest positive integer (32,767 at 16 bits); ours is half the range, as in
 * WAV, so that the same sound gives the same samples. Up to 24 bits the integers come back exactly.
 */
function rescale(channels: readonly Float32Array[], bits: number): void {
  const half = 2 ** (bits - 1);
  if (!(bits >= 4 && bits <= 24)) return;
  for (const samples of channels) {
    for (let i = 0; i < samples.length; i++) {
      samples[i] = Math.round(samples[i]! * (half - 1)) / half;
    }
  }
}
