import { ArcError } from '../../core/index.js';

/** A Redis that does not answer for so long is given up. */
export const QUEUE_PATIENCE_S = 60;

/** Seconds given with a flag; `otherwise` where it was not given. @throws ArcError `bad-seconds`. */
export function secondsOf<T>(flag: string, given: unknown, otherwise: T): number | T {
  if (given === undefined) return otherwise;
  const text = String(given);
  const value = /^\d+(\.\d+)?s?$/.test(text) ? Number.parseFloat(text) : Number.NaN;
  if (value >= 1 && value <= 86_400) return value;
  throw new ArcError({
    code: 'bad-seconds',
    what: `${flag} was given "${text}".`,
    expected: 'seconds from 1 to 86400',
    todo: 'Leave it out for the default.',
  });
}
