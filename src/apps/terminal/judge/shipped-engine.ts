import { type AnalyseOptions, analyse, analyseBoth } from '../../../analysis/index.js';
import { ffmpegDecoder } from '../../../files/ffmpeg-decoder.js';
import { openFileSource } from '../../../files/file-source.js';
import { loadShippedPooling } from '../../../files/shipped-models.js';
import { openRecording } from '../../../recording/index.js';
import type { Engine } from './engine.js';

/** The readers and the analysis of the package, with models from anywhere; with its own where none is given. */
export function engineWith(given?: NonNullable<AnalyseOptions['loadModel']>): Engine {
  const own = given ? { loadModel: given } : {};
  return {
    openSource: openFileSource,
    openRecording: (source, options) =>
      openRecording(source, options, { decoders: [ffmpegDecoder()] }),
    analyse: (recording, options) => analyse(recording, { ...options, ...own }),
    analyseBoth: (sound, trace, options) =>
      analyseBoth(sound, trace, { ...options, ...own, loadPooling: loadShippedPooling }),
  };
}

/** The readers, the analysis and the models that come with the package. */
export const SHIPPED_ENGINE: Engine = engineWith();
