import { quietly } from '../../console-quiet.js';
import type { DecoderConfig, PacketDecoder } from '../../reader.js';
import { amrFrameBytes } from '../amr-frames.js';
import { decoded, type WasmSound } from './common.js';

/** AMR narrow and wide band by `@audio/decode-amr` (opencore-amr, vo-amrwb). */
export async function startAmr(config: DecoderConfig): Promise<PacketDecoder> {
  const { decoder: create } = await import('@audio/decode-amr');
  const wide = config.codec === 'amr-wb';
  const decoder = await create();
  const head = new TextEncoder().encode(wide ? '#!AMR-WB\n' : '#!AMR\n');
  let started = false;
  return {
    async push(packet) {
      // A packet of the wrong length would shift all that follow in the decoder's own buffer.
      if (amrFrameBytes(packet[0] ?? 0xff, wide) !== packet.length)
        throw new Error('damaged packet');
      const bytes = started ? packet : joined(head, packet);
      started = true;
      return decoded(quietly(() => decoder.decode(bytes)) as WasmSound);
    },
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const out = new Uint8Array(first.length + second.length);
  out.set(first);
  out.set(second, first.length);
  return out;
}
