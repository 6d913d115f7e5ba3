import type { MessageCode, ParamsOf } from '../../../src/messages/index.js';
import { COACHED } from './coached.js';
import { RECORDED } from './recorded.js';
import { SPOKEN } from './spoken.js';
import { WRITTEN } from './written.js';

/** For each code params and the text that must come of them; a code without an example does not compile. */
export type Examples = { [C in MessageCode]: readonly (readonly [ParamsOf<C>, string])[] };

/** What cannot be, and what could not be read. */
const IMPLAUSIBLE = {
  'implausible-voltage': [
    [
      { limitV: 160, shareOfTime: 0.62 },
      'The voltage lies beyond 160 V for 62 % of the time, and no arc burns there: a wrong scale, the mains, or a column that holds something else?',
    ],
  ],
  'implausible-current': [
    [
      { how: 'beyond', limitA: 2000, shareOfTime: 0.62 },
      'The current lies beyond 2000 A for 62 % of the time, more than any source of this process gives: a wrong scale, or a column that holds something else?',
    ],
    [
      { how: 'too-little', peakA: 3.5 },
      'The current never goes beyond 3.5 A, and no wire melts with that: a wrong scale, or a column that holds something else?',
    ],
  ],
  'one-sided-sound': [
    [
      {},
      'The samples lie on one side of zero, as the volts or amperes of an arc do and a sound does not. State what the channels hold with --channel and --scale; also where it is sound after all.',
    ],
  ],
  'column-not-read': [
    [{ columns: ['u'], why: 'complex' }, '“u” holds complex numbers and was left out.'],
    [
      { columns: ['u', 'i'], why: 'not-flat-numbers' },
      '“u” and “i” hold no flat numbers and were left out.',
    ],
  ],
  'mode-implausible': [
    [
      { why: { code: 'one-sided-sound', params: {} } },
      'No mode is named. The samples lie on one side of zero, as the volts or amperes of an arc do and a sound does not. State what the channels hold with --channel and --scale; also where it is sound after all.',
    ],
  ],
  'watch-unreadable': [
    [
      { bytes: 4096, quietS: 5 },
      '4096 bytes came in 5 s and none could be read: the speed of the line, or another format?',
    ],
  ],
} satisfies Partial<Examples>;

export const EXAMPLES: Examples = {
  ...SPOKEN,
  ...WRITTEN,
  ...COACHED,
  ...RECORDED,
  ...IMPLAUSIBLE,
};
