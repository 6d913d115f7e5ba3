import { ArcError, isArcError } from '../../core/index.js';

/** An {@link ArcError} for what the operating system said about writing a file or folder. */
export function cannotWrite(path: string, error: unknown): ArcError {
  if (isArcError(error)) return error;
  const code = (error as { code?: unknown } | null)?.code;
  const full = code === 'ENOSPC' || code === 'EDQUOT' || code === 'EFBIG';
  return new ArcError({
    code: full ? 'disk-full' : 'cannot-write',
    what: full
      ? `There is no room left for ${path}.`
      : `${path} cannot be written: ${error instanceof Error ? error.message : String(error)}.`,
    expected: 'a folder that is there, with room, that this user may write to',
    todo: full ? 'Make room and run the same again.' : 'Choose another place with --out.',
    cause: error,
  });
}

export function fileExists(
  path: string,
  todo = 'Choose another name, or pass --overwrite.',
): ArcError {
  return new ArcError({
    code: 'file-exists',
    what: `${path} is there already.`,
    expected: 'the name of a new file',
    todo,
  });
}
