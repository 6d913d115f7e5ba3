import { type Samples, type SamplesFormat, samplesRecording } from '../recording/index.js';
import { type AnalyseOptions, analyse } from './analyse.js';
import { type CommonOptions, settled } from './common-options.js';
import type { Result } from './result/index.js';

/** How samples in memory are to be judged. */
export interface SamplesOptions extends SamplesFormat, CommonOptions {
  /** How the samples are called in the result; `samples` unless told. */
  name?: string;
  /** Told everything on the way, in order: windows, arc intervals. */
  onEvent?: AnalyseOptions['onEvent'];
}

/**
 * Samples in memory to the result document: how the metal crossed, over time, with a calibrated confidence.
 *
 * @param samples sound with full scale 1, volts, amperes, or `[volts, amperes]`
 * @throws ArcError `bad-samples`, `sample-rate-too-low`; what a set-up or a setting says wrong
 * @example
 * const result = await analyseSamples(sound, { sampleRateHz: 44100, quantity: 'sound' });
 * console.log(result.mode, result.confidence);
 */
export async function analyseSamples(samples: Samples, options: SamplesOptions): Promise<Result> {
  const { setup, settings, loadModel } = settled(options);
  return analyse(samplesRecording(samples, options), {
    setup,
    settings,
    ...(loadModel ? { loadModel } : {}),
    path: options.name ?? 'samples',
    sha256: null,
    host: 'library',
    ...(options.onEvent ? { onEvent: options.onEvent } : {}),
  });
}
