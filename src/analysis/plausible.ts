import type { Note } from '../core/index.js';
import { because, type Verdict } from '../judge/index.js';
import { again, message } from '../messages/index.js';

/** Notes of the readers that say: these cannot be the volts, amperes, rate or sound of an arc. */
const IMPLAUSIBLE: readonly string[] = [
  'implausible-voltage',
  'implausible-current',
  'swapped-channels',
  'rate-too-low',
  'one-sided-sound',
];

/** The verdict, without a mode where what was read cannot be what it was taken for: a sure answer would mislead. */
export function plausibleOnly(verdict: Verdict, notes: readonly Note[]): Verdict {
  const why = notes.find((note) => IMPLAUSIBLE.includes(note.code));
  if (!why || verdict.status === 'no-arc') return verdict;
  return {
    ...verdict,
    status: 'unsure',
    ...because(message('mode-implausible', { why: again(why) })),
    mode: null,
    confidence: null,
    probabilities: null,
    shareOfArcTime: null,
    segments: verdict.segments.map((segment) => ({ ...segment, mode: null })),
    reasons: [],
    remainingModes: null,
    wouldSettle: null,
  };
}
