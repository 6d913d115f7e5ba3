import type { Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';

/** Longest recording, s: beyond it a phone's memory is at stake. It is kept and said, not cut silently. */
export const LONGEST_S = 600;

/** Why a recording ended without the button. */
export type Interruption = 'device-gone' | 'call' | 'too-long';

/** How each is said in the notes of the result. */
export function noteOf(by: Interruption): Note {
  return by === 'too-long'
    ? note('recording-interrupted', { by, longestS: LONGEST_S })
    : note('recording-interrupted', { by });
}
