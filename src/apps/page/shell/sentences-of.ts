import { isArcError } from '../../../core/index.js';

/** An error as sentences that can be said one by one: what happened, what was expected, what to do. */
export function sentencesOf(error: unknown): string[] {
  if (!isArcError(error)) return [String(error)];
  return [error.what, `Expected ${error.expected}.`, error.todo];
}
