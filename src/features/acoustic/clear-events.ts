import type { SoundDetail } from '../vector.js';

/** Prominence from which a line stands clear of the highest that chance lifts out of 1,000 bins. */
const CLEAR_LINE = 20;
/** Rise (octaves of amplitude) from which onsets are events and not the unrest of hiss. */
const CLEAR_ONSETS = 2;

/** Whether the event line of a window stands clear: a rate that is exact where events are even. */
export function hasClearLine({ lineProminence }: Pick<SoundDetail, 'lineProminence'>): boolean {
  return lineProminence >= CLEAR_LINE;
}

/** Whether the sudden rises of a window are events: their count stands in where events are not even. */
export function hasClearOnsets({ onsetStrength }: SoundDetail): boolean {
  return onsetStrength >= CLEAR_ONSETS;
}
