import type { Note } from '../core/index.js';
import { note } from '../messages/index.js';

/** Notices that the channel taken by default holds nothing while another one does. */
export interface SilenceWatch {
  /** False once the question is settled, so that no other channel need be decoded. */
  wanted(): boolean;
  observe(chosen: Float64Array, others: Iterable<Float64Array>): void;
  finish(notes: Note[]): void;
}

/** Asks only while the chosen channel has been constant from the start. */
export function createSilenceWatch(): SilenceWatch {
  let chosenIsFlat = true;
  let otherHasSound = false;
  return {
    wanted: () => chosenIsFlat && !otherHasSound,
    observe(chosen, others) {
      if (chosenIsFlat) chosenIsFlat = isConstant(chosen);
      if (!chosenIsFlat || otherHasSound) return;
      for (const other of others) otherHasSound ||= !isConstant(other);
    },
    finish(notes) {
      if (!chosenIsFlat || !otherHasSound) return;
      notes.push(note('chosen-channel-silent'));
    },
  };
}

function isConstant(samples: Float64Array): boolean {
  const first = samples[0];
  for (let i = 1; i < samples.length; i++) if (samples[i] !== first) return false;
  return true;
}
