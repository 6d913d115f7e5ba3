import type { Settings } from '../../analysis/index.js';
import { SCHEMA_VERSION } from '../../analysis/result/index.js';
import { fingerprint, TOOL_VERSION } from '../../core/index.js';
import type { ReadOptions } from '../../recording/index.js';
import type { RawSetup } from '../terminal/flags/setup-flags.js';

export type { RawSetup };

/** What holds for every input of a batch. Plain JSON, so that threads and other hosts can take it. */
export interface LabelPlan {
  settings: Settings;
  reading: ReadOptions;
  /** Whether the judgement of every window is wanted. */
  windows: boolean;
  /** Model files named by the user; absent for the models of the package. */
  models?: readonly string[];
}

/** One input to label. */
export interface LabelTask {
  path: string;
  /** Files found in a folder may turn out to be no recordings; named ones may not. */
  origin: 'named' | 'folder';
  setup: RawSetup;
  /** Names everything but the input that the answer depends on, see {@link planFingerprint}. */
  fingerprint: string;
}

/**
 * One name for everything but the input that an answer depends on: tool, models, settings, reading and
 * set-up. The kind of table is left out, since it changes no answer.
 */
export function planFingerprint(plan: LabelPlan, setup: RawSetup, models: string): string {
  const { settings, reading } = plan;
  return fingerprint({ TOOL_VERSION, SCHEMA_VERSION, models, settings, reading, setup });
}
