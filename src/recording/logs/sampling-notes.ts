import type { Note } from '../../core/index.js';

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
    notes.push({
      code: 'rate-too-low',
      message: `At ${say(rateHz)} Hz single short circuits, drops and pulses cannot be followed (short circuits come up to some 200 a second): the trace shows slow changes only.`,
    });
  } else if (shown < SAMPLES_A_SHORT) {
    const shortestMs = (1000 * SAMPLES_A_SHORT) / rateHz;
    notes.push({
      code: 'rate-low',
      message: `At ${say(rateHz)} Hz a short circuit of 1 ms is shown by ${say(shown)} ${shown === 1 ? 'sample' : 'samples'} (${SAMPLES_A_SHORT} are needed): shorts under ${say(shortestMs)} ms are measured badly or missed, and drop steps and current rise cannot be measured.`,
    });
  }
  if (rateHz < 2 * SWITCHING_HZ) {
    notes.push({
      code: 'aliasing',
      message: `Ripple of an inverter source (some 15 to 100 kHz) folds into a trace sampled at ${say(rateHz)} Hz unless it was filtered before sampling, and can look like slow lines.`,
    });
  }
  return notes;
}

function say(value: number): string {
  return String(Number(value.toPrecision(4)));
}
