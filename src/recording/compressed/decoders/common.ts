import type { DecodedSound } from '../../reader.js';

/** The shape in which the WebAssembly decoders answer. */
export interface WasmSound {
  channelData: Float32Array[];
  sampleRate: number;
  errors?: readonly { message: string }[] | number;
}

/**
 * One packet's sound; undefined when there is none.
 *
 * @throws Error when the decoder reports the packet as damaged and gives nothing for it.
 */
export function decoded(sound: WasmSound): DecodedSound | undefined {
  const frames = sound.channelData[0]?.length ?? 0;
  if (frames > 0) return { sampleRateHz: sound.sampleRate, channels: sound.channelData };
  if (typeof sound.errors === 'object' && sound.errors.length > 0) {
    throw new Error(sound.errors[0]?.message ?? 'damaged packet');
  }
  return undefined;
}
