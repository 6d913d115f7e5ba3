import { isArcError } from '../../core/index.js';
import { visible } from '../view/index.js';

/** The words of an error on stderr. Errors that are not ours come with their stack: they are bugs. */
export function sayError(error: unknown, about?: string): void {
  const lead = about === undefined ? 'error' : `error: ${visible(about)}`;
  if (isArcError(error)) {
    process.stderr.write(`${lead}: ${visible(error.message)} [${error.code}]\n`);
    return;
  }
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  process.stderr.write(`${lead}: something went wrong inside the tool itself.\n${visible(text)}\n`);
}

/** For an action whose input cannot be used: says why and lets the process end with status 1. */
export function failInput(error: unknown, about: string): void {
  sayError(error, about);
  process.exitCode = 1;
}
