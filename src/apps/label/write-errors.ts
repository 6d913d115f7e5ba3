import { ArcError } from '../../core/index.js';
import { cannotWrite as plainly } from '../terminal/write-errors.js';

export { fileExists } from '../terminal/write-errors.js';

/** An {@link ArcError} for what the operating system said about writing a file of a batch. */
export function cannotWrite(path: string, error: unknown): ArcError {
  const said = plainly(path, error);
  if (said.code !== 'disk-full') return said;
  return new ArcError({
    code: 'disk-full',
    what: said.what,
    expected: 'room for the table and its journal, about 20 kB a recording',
    todo: 'What was labelled so far is safe in the journal: make room and run the same again.',
    cause: error,
  });
}
