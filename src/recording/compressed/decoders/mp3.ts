import { quietly } from '../../console-quiet.js';
import type { DecodedSound, DecoderConfig, PacketDecoder } from '../../reader.js';
import { decoded } from './common.js';

/** MP3 by `mpg123-decoder`. Its own trimming is off: the container says what to trim. */
export async function startMp3(config: DecoderConfig): Promise<PacketDecoder> {
  const { MPEGDecoder } = await import('mpg123-decoder');
  const decoder = new MPEGDecoder({ enableGapless: false });
  await decoder.ready;
  return {
    async push(packet): Promise<DecodedSound | undefined> {
      const sound = decoded(quietly(() => decoder.decodeFrame(packet)));
      // It always gives two channels; mono comes doubled.
      return sound && { ...sound, channels: sound.channels.slice(0, config.channels) };
    },
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}
