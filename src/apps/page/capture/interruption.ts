/** Longest recording, s: beyond it a phone's memory is at stake. It is kept and said, not cut silently. */
export const LONGEST_S = 600;

/** Why a recording ended without the button. */
export type Interruption = 'device-gone' | 'call' | 'too-long';

/** How each is said in the notes of the result. */
export const INTERRUPTIONS: Record<Interruption, string> = {
  'device-gone':
    'The microphone was taken away while recording; what came before is kept and judged.',
  call: 'A call or a locked screen ended the recording; what came before is kept and judged.',
  'too-long': `The recording was ended after ${LONGEST_S} s.`,
};
