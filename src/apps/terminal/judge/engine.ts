import type { AnalyseBothOptions, AnalyseOptions } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import type { ByteSource, ReadOptions, Recording } from '../../../recording/index.js';

/** A file opened for reading at any place. */
export interface OpenSource extends ByteSource {
  close(): Promise<void>;
}

/** The three steps from a path to a result; tests of the command put their own in. */
export interface Engine {
  openSource(path: string): Promise<OpenSource>;
  openRecording(source: ByteSource, options: ReadOptions): Promise<Recording>;
  analyse(recording: Recording, options: Omit<AnalyseOptions, 'loadModel'>): Promise<Result>;
  /** A sound and a trace of one run; left out by engines that draw pictures of one recording. */
  analyseBoth?(
    sound: Recording,
    trace: Recording,
    options: Omit<AnalyseBothOptions, 'loadModel' | 'loadPooling'>,
  ): Promise<Result>;
}
