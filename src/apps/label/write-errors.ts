import { ArcError } from '../../core/index.js';

/** An {@link ArcError} for what the operating system said about writing a file. */
export function cannotWrite(path: string, error: unknown): ArcError {
  const code = (error as { code?: unknown }).code;
  const why = error instanceof Error ? error.message : String(error);
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'EFBIG') {
    return new ArcError({
      code: 'disk-full',
      what: `There is no room left for ${path}.`,
      expected: 'room for the table and its journal, about 20 kB a recording',
      todo: 'What was labelled so far is safe in the journal: make room and run the same again.',
      cause: error,
    });
  }
  return new ArcError({
    code: 'cannot-write',
    what: `${path} cannot be written: ${why}.`,
    expected: 'a folder that is there and that this user may write to',
    todo: 'Choose another place with --out.',
    cause: error,
  });
}

export function fileExists(path: string, todo: string): ArcError {
  return new ArcError({
    code: 'file-exists',
    what: `${path} is there already.`,
    expected: 'the name of a new file',
    todo,
  });
}
