import type { Mode, RunMode } from '../../core/index.js';
import type { Nothing } from '../terms.js';

/** What is said of a sound and a trace of one run. */
export interface PairParams {
  'too-little-in-both': Nothing;
  'trace-unlike-model': Nothing;
  'sound-against-trace': { sound: Mode; trace: Mode };
  'not-of-one-run': { sound: RunMode; trace: RunMode };
  'not-fused': Nothing;
  'alignment-not-shown': Nothing;
  'pooling-of-other-models': Nothing;
}
