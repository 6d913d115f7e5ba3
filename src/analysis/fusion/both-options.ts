import type { AnalyseOptions } from '../analyse.js';
import type { Pipeline } from '../pipeline.js';
import type { Source } from './both-source.js';

/** What a result of two recordings must know beside their samples. */
export interface AnalyseBothOptions extends Omit<AnalyseOptions, 'onEvent'> {
  /** The trace: how it is called in the result. */
  trace: { path: string; sha256: string | null };
  /** States that one clock ran both recorders, so that the delay is the sound's way through the air. */
  sharedClock: boolean;
  /** The document that says how far each is believed. */
  loadPooling: () => Promise<unknown>;
}

/** A recording that went through its pipeline, with what the joint judgement needs. */
export interface HeardSource extends Source {
  pipeline: Pipeline;
  bins: Float32Array;
}
