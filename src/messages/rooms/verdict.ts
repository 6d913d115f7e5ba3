import type { Mode } from '../../core/index.js';
import type { Message, Nothing } from '../terms.js';

/** Why a run is answered as it is. */
export interface VerdictParams {
  'no-arc-shown': Nothing;
  /** Plain measurements say what is heard instead. */
  'plainly-no-arc': { heard: 'nothing-recorded' | 'tone' | 'hum' };
  'may-be-an-arc': { probability: number };
  'arc-too-short': Nothing;
  'arc-unlike-model': Nothing;
  /** Modes with their share of the judged arc time, the longest first. */
  'modes-mixed': { modes: { mode: Mode; shareOfTime: number }[] };
  'mode-not-sure': { mode: Mode; probability: number };
  /** Several modes remain; `not` are those that are ruled out. */
  'one-of-modes': { modes: Mode[]; probability: number; not: Mode[] };
  /** Globular or spray, told apart by a size that cannot be heard. */
  'drop-size-not-audible': { probability: number };
  /** What would settle an answer by ear; `tooLoud` where samples are cut off. */
  'would-settle': { tooLoud: boolean };
  'run-against-moments': { run: Mode; moments: Mode };
  'mode-held': { mode: Mode; shareOfTime: number };
  /** What was read cannot be what it was taken for. */
  'mode-implausible': { why: Message };
  /** The input could not be read or judged; the text is that of the error, in English. */
  'input-failed': { errorCode: string; text: string };
}
