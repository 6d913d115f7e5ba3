import { isArcError } from '../../../src/core/index.js';
import { bufferSource, openRecording, type ReadOptions } from '../../../src/recording/index.js';

/** The most samples that a byte of any format here can stand for, with much to spare (silent FLAC frames). */
const SAMPLES_A_BYTE = 50_000;

/**
 * Reads bytes to their end. Whatever they are, that ends in samples or in an ArcError; anything else is
 * thrown on: foreign errors, samples that are no numbers, channels of different lengths, output without bound.
 */
export async function survives(
  bytes: Uint8Array,
  options: ReadOptions = {},
): Promise<'samples' | 'error'> {
  try {
    const recording = await openRecording(bufferSource(bytes, 'fuzz.bin'), options);
    let samples = 0;
    for await (const { channels, startSample } of recording.blocks()) {
      if (startSample !== samples) throw new Error(`a block at ${startSample}, not ${samples}`);
      for (const channel of channels) {
        if (channel.length !== channels[0]!.length) throw new Error('channels differ in length');
        if (!channel.every(Number.isFinite)) throw new Error('a sample is not finite');
      }
      samples += channels[0]!.length;
      if (samples > 1_000_000 + SAMPLES_A_BYTE * bytes.length)
        throw new Error(`${samples} samples out of ${bytes.length} bytes`);
    }
    return 'samples';
  } catch (error) {
    if (!isArcError(error)) throw error;
    return 'error';
  }
}
