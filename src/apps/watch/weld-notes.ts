import type { Note } from '../../core/index.js';
import { note } from '../../messages/index.js';

/** What the result of one weld out of a stream must say beside what one from a file says. */
export function weldNotes(weld: number, startedAt: Date, lostSamples: number): Note[] {
  const notes = [note('live-weld', { weld, startedAt: startedAt.toISOString() })];
  if (lostSamples > 0) notes.push(note('live-lost-samples', { samples: lostSamples }));
  return notes;
}
