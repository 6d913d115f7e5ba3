import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';

/** Samples that a short circuit needs to be seen as one (common practice in arc monitoring). */
const SAMPLES_A_SHORT = 5;
const SHORT_S = 0.001;
/** Inverters switch at some 15 to 100 kHz (common practice, no source). */
const SWITCHING_HZ = 100_000;

/** What a rate can and cannot show of an electrical trace. Empty above 200 kHz. */
export function samplingNotes(rateHz: number): Note[] {
  const notes: Note[] = [];
  const shown = rateHz * SHORT_S;
  if (rateHz < 400) {
    notes.push(note('rate-too-low', { rateHz }));
  } else if (shown < SAMPLES_A_SHORT) {
    const shortestMs = (1000 * SAMPLES_A_SHORT) / rateHz;
    const samples = { samplesPerMs: shown, neededSamples: SAMPLES_A_SHORT };
    notes.push(note('rate-low', { rateHz, ...samples, shortestMs }));
  }
  if (rateHz < 2 * SWITCHING_HZ) {
    notes.push(note('aliasing', { rateHz }));
  }
  return notes;
}
