import type { Mode } from '../../core/index.js';
import type { Message, Nothing } from '../terms.js';

/** Why a run is answered as it is. */
export interface VerdictParams {
  'no-arc-shown': Nothing;
  'may-be-an-arc': { probability: number };
  'arc-too-short': Nothing;
  'arc-unlike-model': Nothing;
  'faint-even-beat': Nothing;
  /** Modes with their share of the judged arc time, the longest first. */
  'modes-mixed': { modes: { mode: Mode; shareOfTime: number }[] };
  'mode-not-sure': { mode: Mode; probability: number };
  'run-against-moments': { run: Mode; moments: Mode };
  'mode-held': { mode: Mode; shareOfTime: number };
  /** What was read cannot be what it was taken for. */
  'mode-implausible': { why: Message };
  /** The input could not be read or judged; the text is that of the error, in English. */
  'input-failed': { errorCode: string; text: string };
}
