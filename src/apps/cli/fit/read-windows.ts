import { isArcError } from '../../../core/index.js';
import { ffmpegDecoder } from '../../../files/ffmpeg-decoder.js';
import { openFileSource } from '../../../files/file-source.js';
import { loadShippedModel } from '../../../files/shipped-models.js';
import { type RecordedWindows, recordedWindows } from '../../../lab/evaluate/index.js';
import { openRecording, type ReadOptions } from '../../../recording/index.js';

/** The windows of a recording, or why there are none: errors lose their fields on the way out of a thread. */
export type ReadOutcome =
  | { windows: RecordedWindows }
  | { failure: { code: string; what: string; expected: string; todo: string } };

/** Reads a recording for fitting; a fault of the recording is an outcome, a fault of the tool an error. */
export async function readWindows(path: string, reading: ReadOptions): Promise<ReadOutcome> {
  try {
    return { windows: await windowsIn(path, reading) };
  } catch (error) {
    if (!isArcError(error)) throw error;
    const { code, what, expected, todo } = error;
    return { failure: { code, what, expected, todo } };
  }
}

async function windowsIn(path: string, reading: ReadOptions): Promise<RecordedWindows> {
  const source = await openFileSource(path);
  try {
    const recording = await openRecording(source, reading, { decoders: [ffmpegDecoder()] });
    try {
      return await recordedWindows(recording, loadShippedModel);
    } finally {
      await recording.close?.();
    }
  } finally {
    await source.close();
  }
}
