import { type Recording, writeWav } from '../../recording/index.js';

/** A part to cut, seconds from the start of the recording. */
export interface Cut {
  startS: number;
  endS: number;
}

/**
 * Parts of a recording as WAV files, read once from front to back. Sound keeps its rate in 24 bits;
 * voltage and current are stored as numbers in V and A. Undefined where the recording ended before.
 */
export async function cutParts(
  recording: Recording,
  parts: readonly Cut[],
): Promise<(Uint8Array | undefined)[]> {
  const { sampleRateHz } = recording;
  const cuts = parts.map(({ startS, endS }) => {
    const from = Math.round(startS * sampleRateHz);
    const length = Math.max(0, Math.round(endS * sampleRateHz) - from);
    return { from, filled: 0, channels: recording.channels.map(() => new Float64Array(length)) };
  });
  for await (const block of recording.blocks()) {
    const count = block.channels[0]?.length ?? 0;
    for (const cut of cuts) {
      const length = cut.channels[0]?.length ?? 0;
      const start = Math.max(cut.from, block.startSample);
      const end = Math.min(cut.from + length, block.startSample + count);
      if (end <= start) continue;
      block.channels.forEach((samples, at) => {
        const part = samples.subarray(start - block.startSample, end - block.startSample);
        cut.channels[at]?.set(part, start - cut.from);
      });
      cut.filled = end - cut.from;
    }
  }
  return Promise.all(cuts.map(({ channels, filled }) => toWav(recording, channels, filled)));
}

async function toWav(
  recording: Recording,
  channels: readonly Float64Array[],
  filled: number,
): Promise<Uint8Array | undefined> {
  if (filled === 0) return undefined;
  const kept = channels.map((samples) => samples.subarray(0, filled));
  const loud = kept.some((samples) => samples.some((value) => Math.abs(value) > 1));
  const depth = recording.kind === 'sound' && !loud ? '24' : '32f';
  return writeWav(kept, recording.sampleRateHz, depth);
}
