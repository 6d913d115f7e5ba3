import type { Note } from '../../core/index.js';

/** What the result of one weld out of a stream must say beside what one from a file says. */
export function weldNotes(weld: number, startedAt: Date, lostSamples: number): Note[] {
  const notes = [
    {
      code: 'live-weld',
      message: `Weld ${weld} of a live signal; times count from its first sample, heard at ${startedAt.toISOString()}.`,
    },
  ];
  if (lostSamples > 0)
    notes.push({
      code: 'live-lost-samples',
      message: `${lostSamples} samples were lost in the line since the weld before.`,
    });
  return notes;
}
