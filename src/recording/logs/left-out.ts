import type { Note } from '../../core/index.js';

/** Says which columns were passed over though their names are those of what is wanted. */
export function leftOutNote(names: readonly string[], why: string): Note {
  const list = names.slice(0, 8).map((name) => `“${name.slice(0, 60)}”`);
  return {
    code: 'column-not-read',
    message: `${list.join(', ')} ${names.length === 1 ? 'holds' : 'hold'} ${why} and ${names.length === 1 ? 'was' : 'were'} left out.`,
  };
}
