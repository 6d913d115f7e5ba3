import { compandingTable } from './companding.js';
import type { PcmFormat } from './format.js';
import { decodeImaBlock } from './ima-adpcm.js';
import { type ChannelDecoder, channelDecoder } from './samples.js';

/** Writes the samples of one channel of whole blocks to `out`, full scale at 1. */
export type BlockDecoder = ChannelDecoder;

/** The decoder for a format; loads the companding table where one is needed. */
export async function blockDecoder(format: PcmFormat, bigEndian: boolean): Promise<BlockDecoder> {
  const { encoding, blockBytes, blockFrames } = format;
  if (encoding === 'a-law' || encoding === 'mu-law') {
    return channelDecoder(format, bigEndian, await compandingTable(encoding));
  }
  if (encoding !== 'ima-adpcm') return channelDecoder(format, bigEndian);
  return (bytes, channel, out) => {
    for (let at = 0, frame = 0; frame < out.length; at += blockBytes, frame += blockFrames) {
      const block = bytes.subarray(at, at + blockBytes);
      decodeImaBlock(block, format, channel, out.subarray(frame, frame + blockFrames));
    }
  };
}
