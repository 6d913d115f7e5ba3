import { hasAscii } from '../sniff.js';
import type { ByteSource } from '../types.js';

/** Channels by the header of an MPEG audio frame: mode 3 is mono. */
export function mpegChannels(frame: Uint8Array): number {
  return frame.length >= 4 && frame[3]! >> 6 === 3 ? 1 : 2;
}

/** What the LAME tag says of encoder delay. */
export interface LameTrim {
  /** Samples to drop at the start. */
  skip: number;
  /** Length of the recording in samples, where the tag counts the frames. */
  totalFrames?: number;
}

/** Delay of the decoder's filter bank, 528 samples and 1; from memory of the LAME tag's description. */
const DECODER_DELAY = 529;
const HEAD_BYTES = 64 * 1024;

/** Reads the Xing/Info frame with its LAME extension. Undefined when the file has none. */
export async function lameTrim(source: ByteSource): Promise<LameTrim | undefined> {
  const tagBytes = await id3Bytes(source);
  const head = (await source.read(tagBytes, HEAD_BYTES)).slice();
  const frame = head.findIndex((byte, i) => byte === 0xff && (head[i + 1]! & 0xe0) === 0xe0);
  if (frame < 0 || frame > 4096) return undefined;
  const version1 = ((head[frame + 1]! >> 3) & 3) === 3;
  const mono = head[frame + 3]! >> 6 === 3;
  const side = version1 ? (mono ? 17 : 32) : mono ? 9 : 17;
  const tag = frame + 4 + side;
  if (!hasAscii(head, tag, 'Xing') && !hasAscii(head, tag, 'Info')) return undefined;
  const view = new DataView(head.buffer);
  const flags = view.getUint32(tag + 4);
  let at = tag + 8;
  const frames = flags & 1 ? view.getUint32(at) : undefined;
  // Frame count, byte count, seek table, quality: each there if its flag is.
  at += (flags & 1 ? 4 : 0) + (flags & 2 ? 4 : 0) + (flags & 4 ? 100 : 0) + (flags & 8 ? 4 : 0);
  if (at + 24 > head.length) return undefined;
  const delay = (head[at + 21]! << 4) | (head[at + 22]! >> 4);
  const padding = ((head[at + 22]! & 15) << 8) | head[at + 23]!;
  if (delay === 0 && padding === 0) return undefined;
  const skip = delay + DECODER_DELAY;
  if (frames === undefined) return { skip };
  const samples = frames * (version1 ? 1152 : 576);
  return { skip, totalFrames: Math.max(0, samples - delay - padding) };
}

/** Length of an ID3v2 tag at the start (its size is stored in 7-bit bytes); 0 without one. */
async function id3Bytes(source: ByteSource): Promise<number> {
  const head = (await source.read(0, 10)).slice();
  if (head.length < 10 || !hasAscii(head, 0, 'ID3')) return 0;
  const size = (head[6]! << 21) | (head[7]! << 14) | (head[8]! << 7) | head[9]!;
  return 10 + size + (head[5]! & 0x10 ? 10 : 0);
}
