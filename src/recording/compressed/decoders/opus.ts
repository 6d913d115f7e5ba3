import { quietly } from '../../console-quiet.js';
import type { DecoderConfig, PacketDecoder } from '../../reader.js';
import { opusLayout } from '../opus-head.js';
import { decoded } from './common.js';

/** Opus by `opus-decoder` (libopus). Always at 48 kHz; the lead is left to the caller. */
export async function startOpus(config: DecoderConfig): Promise<PacketDecoder> {
  const { OpusDecoder } = await import('opus-decoder');
  const layout = opusLayout(config.description, config.channels);
  const decoder = new OpusDecoder({
    channels: layout.channels,
    streamCount: layout.streams,
    coupledStreamCount: layout.coupled,
    channelMappingTable: layout.mapping,
    preSkip: 0,
  });
  await decoder.ready;
  return {
    push: async (packet) => decoded(quietly(() => decoder.decodeFrame(packet))),
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}
