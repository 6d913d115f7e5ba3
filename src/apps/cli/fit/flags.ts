import { ArcError } from '../../../core/index.js';

/** What `arc-transfer fit` was told. */
export type FitFlags = Record<string, string | boolean | undefined>;

/** The value of a flag that must be there. */
export function needed(flags: FitFlags, key: string, flag: string): string {
  const value = flags[key];
  if (typeof value === 'string') return value;
  throw new ArcError({
    code: 'missing-option',
    what: `fit was not told where to write.`,
    expected: flag,
    todo: `Add ${flag} <path>.`,
  });
}
