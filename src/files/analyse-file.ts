import { analyse, analyseBoth, type CommonOptions, settled } from '../analysis/index.js';
import type { Result } from '../analysis/result/index.js';
import { openRecording, type ReadOptions, type Recording } from '../recording/index.js';
import { ffmpegDecoder } from './ffmpeg-decoder.js';
import { type FileSource, openFileSource } from './file-source.js';
import { hash } from './hash.js';
import { loadShippedPooling } from './shipped-models.js';

/** How a file is to be judged; all of it may be left out. */
export interface FileOptions extends CommonOptions {
  /** Which channel is which, their scale, the rate: what the file itself does not say. */
  reading?: ReadOptions;
  /** Path of a trace of the same run, when the file is a sound: both are judged together. */
  withTrace?: string;
  /** States that one clock ran both recorders. */
  sharedClock?: boolean;
}

/**
 * A recording in a file to the result document, with the decoders and models of the command line.
 *
 * @param path a sound, or a table or log of volts and amperes
 * @throws ArcError what opening, reading, the set-up or a setting found wrong
 * @example
 * const result = await analyseFile('weld.wav', { setup: { gas: 'Ar+18CO2', setVoltage: 18.5 } });
 * console.log(result.mode, result.confidence);
 */
export async function analyseFile(path: string, options: FileOptions = {}): Promise<Result> {
  const { setup, settings, loadModel } = settled(options);
  const { reading = {}, withTrace, sharedClock = false } = options;
  return opened(path, reading, async (recording, sha256) => {
    const own = loadModel ? { loadModel } : {};
    const common = { setup, settings, ...own, path, sha256, host: 'node' };
    if (withTrace === undefined) return analyse(recording, common);
    return opened(withTrace, reading, (trace, traceHash) =>
      analyseBoth(recording, trace, {
        ...common,
        trace: { path: withTrace, sha256: traceHash },
        sharedClock,
        loadPooling: loadShippedPooling,
      }),
    );
  });
}

/** Opens, hands over, and closes whatever happens. */
async function opened<T>(
  path: string,
  reading: ReadOptions,
  use: (recording: Recording, sha256: string) => Promise<T>,
): Promise<T> {
  const source: FileSource = await openFileSource(path);
  let recording: Recording | undefined;
  try {
    recording = await openRecording(source, reading, { decoders: [ffmpegDecoder()] });
    return await use(recording, await hash(source));
  } finally {
    await recording?.close?.();
    await source.close();
  }
}
