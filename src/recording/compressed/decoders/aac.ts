import type { DecodedSound, DecoderConfig, PacketDecoder } from '../../reader.js';
import { decoded, type WasmSound } from './common.js';

/** What we use of the optional package; it may be absent, so its types are not relied on. */
interface AacPackage {
  decoder(options: { asc?: Uint8Array; alac?: Uint8Array }): Promise<{
    decode(packet: Uint8Array): WasmSound;
    free(): void;
  }>;
}

/** Half the length of the SBR filter bank's delay line, by which that package's HE-AAC output is late. */
const SBR_DELAY = 962;

/**
 * AAC by the package `@audio/decode-aac` (GPL-2.0), which comes with nothing and is installed by those who want it:
 * loaded only when an AAC file is opened that the host cannot decode, and never bundled. Rejects where it is absent.
 */
export async function startAac(config: DecoderConfig): Promise<PacketDecoder> {
  if (!config.description) throw new Error('AAC without its AudioSpecificConfig');
  const decoder = await (await load()).decoder({ asc: config.description });
  return {
    // The decoder keeps its first frame: 1,024 samples, twice that with spectral band replication.
    leadFrames: (rateHz) => (rateHz > config.sampleRateHz * 1.5 ? 2048 - SBR_DELAY : 1024),
    push: async (packet) => decoded(decoder.decode(packet)),
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}

/** Apple Lossless, by the same optional package. */
export async function startAlac(config: DecoderConfig): Promise<PacketDecoder> {
  if (!config.description) throw new Error('ALAC without its settings');
  const decoder = await (await load()).decoder({ alac: config.description });
  return {
    push: async (packet): Promise<DecodedSound | undefined> => decoded(decoder.decode(packet)),
    flush: async () => undefined,
    close: () => decoder.free(),
  };
}

async function load(): Promise<AacPackage> {
  // A name in a variable keeps bundlers and the type checker from resolving an optional package.
  const name = '@audio/decode-aac';
  return (await import(/* @vite-ignore */ name)) as AacPackage;
}
