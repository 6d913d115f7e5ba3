import {
  bufferSource,
  openRecording,
  type ReadOptions,
  type Recording,
} from '../../src/recording/index.js';

export interface WholeRecording {
  recording: Recording;
  channels: Float64Array[];
  noteCodes: string[];
}

/** Opens bytes and joins all blocks; checks on the way that blocks follow each other without a gap. */
export async function readAll(
  bytes: Uint8Array,
  options: ReadOptions = {},
): Promise<WholeRecording> {
  return drain(await openRecording(bufferSource(bytes, 'case.bin'), options));
}

export async function drain(recording: Recording): Promise<WholeRecording> {
  const parts: Float64Array[][] = recording.channels.map(() => []);
  let next = 0;
  for await (const block of recording.blocks()) {
    if (block.startSample !== next) throw new Error(`block at ${block.startSample}, not ${next}`);
    for (const [c, samples] of block.channels.entries()) parts[c]!.push(samples.slice());
    next += block.channels[0]!.length;
  }
  const channels = parts.map((list) => {
    const out = new Float64Array(next);
    let at = 0;
    for (const part of list) {
      out.set(part, at);
      at += part.length;
    }
    return out;
  });
  return { recording, channels, noteCodes: recording.notes.map((note) => note.code) };
}

/** Largest difference between two arrays; Infinity when they differ in length. */
export function largestError(actual: Float64Array, expected: Float64Array): number {
  if (actual.length !== expected.length) return Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let i = 0; i < actual.length; i++) {
    const error = Math.abs(actual[i]! - expected[i]!);
    // A NaN must not slip through a comparison.
    if (!(error <= largest)) largest = Number.isNaN(error) ? Number.POSITIVE_INFINITY : error;
  }
  return largest;
}
