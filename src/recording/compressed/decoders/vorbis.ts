import { quietly } from '../../console-quiet.js';
import type { DecoderConfig, PacketDecoder } from '../../reader.js';
import { decoded } from './common.js';

/**
 * Vorbis by `@wasm-audio-decoders/ogg-vorbis` (libvorbis). The decoder takes Ogg pages as its parser
 * makes them; ours are made of the container's packets, so that WebM goes the same way.
 */
export async function startVorbis(config: DecoderConfig): Promise<PacketDecoder> {
  const { OggVorbisDecoder } = await import('@wasm-audio-decoders/ogg-vorbis');
  const [identification, , setup] = vorbisHeaders(config.description);
  const decoder = new OggVorbisDecoder();
  await decoder.ready;
  await decoder.decodeOggPages([{ data: identification, codecFrames: [] }] as never);
  return {
    async push(packet) {
      // The decoder looks at a page's first byte to find the identification, and takes the set-up once.
      const frame = { data: packet, header: { vorbisSetup: setup } };
      const pages = [{ data: Uint8Array.of(0), codecFrames: [frame] }] as never;
      return decoded(await quietly(() => decoder.decodeOggPages(pages)));
    },
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}

/**
 * The three header packets from their Xiph lacing: a count, lengths in runs of 255, then the packets.
 *
 * @throws Error when the lengths don't fit.
 */
export function vorbisHeaders(
  description: Uint8Array | undefined,
): [Uint8Array, Uint8Array, Uint8Array] {
  if (description?.[0] !== 2) throw new Error('Vorbis without its headers');
  let at = 1;
  const length = (): number => {
    let sum = 0;
    for (; at < description.length; at++) {
      const byte = description[at]!;
      sum += byte;
      if (byte !== 255) break;
    }
    at++;
    return sum;
  };
  const first = length();
  const second = length();
  const third = at + first + second;
  if (third >= description.length) throw new Error('Vorbis headers are cut off');
  return [
    description.slice(at, at + first),
    description.slice(at + first, third),
    description.slice(third),
  ];
}

/** Samples of the long block, by the identification header: the span within which time detail smears. */
export function vorbisLongBlock(description: Uint8Array | undefined): number {
  try {
    return 1 << (vorbisHeaders(description)[0][28]! >> 4);
  } catch {
    return 2048;
  }
}
