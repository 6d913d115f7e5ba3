import { ffmpegDecoder } from '../../../files/ffmpeg-decoder.js';
import { openFileSource } from '../../../files/file-source.js';
import { openRecording, type ReadOptions } from '../../../recording/index.js';
import { type LiveItem, type LiveSource, noLosses } from './types.js';
import { pause } from './until-aborted.js';

/** Samples are given out in pieces of this length, s of the recording. */
const PIECE_S = 0.05;

/** A recording played as if it were live: `speed` times real time, or as fast as it can be read. */
export function replaySource(path: string, speed: number, reading: ReadOptions): LiveSource {
  return {
    name: path,
    losses: noLosses(),
    items: (signal) => replay(path, speed, reading, signal),
  };
}

async function* replay(
  path: string,
  speed: number,
  reading: ReadOptions,
  signal: AbortSignal,
): AsyncGenerator<LiveItem> {
  const source = await openFileSource(path);
  try {
    const recording = await openRecording(source, reading, { decoders: [ffmpegDecoder()] });
    yield { type: 'format', format: recording };
    const startMs = performance.now();
    const rateHz = recording.sampleRateHz;
    const piece = Math.max(1, Math.round(PIECE_S * rateHz));
    let given = 0;
    for await (const { channels } of recording.blocks()) {
      const length = channels[0]!.length;
      for (let at = 0; at < length && !signal.aborted; at += piece) {
        const part = channels.map((samples) => samples.slice(at, at + piece));
        given += part[0]!.length;
        const dueMs = startMs + (1000 * given) / rateHz / speed;
        if (Number.isFinite(speed)) await pause(dueMs - performance.now(), signal);
        yield { type: 'samples', channels: part };
      }
      if (signal.aborted) break;
    }
    await recording.close?.();
  } finally {
    await source.close();
  }
}
