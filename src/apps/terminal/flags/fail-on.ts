import type { Result } from '../../../analysis/result/index.js';
import { ArcError, didYouMean, MODES } from '../../../core/index.js';

/** What `--fail-on` may name. */
export const FAIL_ON = [
  'disagrees',
  'settings-disagree',
  'wanted-disagrees',
  'cannot-tell',
  'unsure',
  'no-arc',
  'mixed',
  ...MODES,
] as const;
export type FailOn = (typeof FAIL_ON)[number];

/** Reads `disagrees,unsure`. @throws ArcError `bad-fail-on`. */
export function parseFailOn(given: string | undefined): FailOn[] {
  if (given === undefined) return [];
  return given.split(',').map((part) => {
    const name = part.trim().toLowerCase();
    const known = FAIL_ON.find((one) => one === name);
    if (known) return known;
    throw new ArcError({
      code: 'bad-fail-on',
      what: `--fail-on was given "${part.trim()}".${didYouMean(name, FAIL_ON)}`,
      expected: `one or more of ${FAIL_ON.join(', ')}, with commas between`,
      todo: 'Inputs that could not be read always give exit status 1.',
    });
  });
}

/** True when a result meets what is to fail. */
export function meetsFailOn(result: Result, failOn: readonly FailOn[]): boolean {
  const settings = result.crossCheck?.settings.answer;
  const wanted = result.crossCheck?.intended?.answer;
  return failOn.some((one) => {
    if (one === 'settings-disagree') return settings === 'disagrees';
    if (one === 'wanted-disagrees') return wanted === 'disagrees';
    return one === result.status || one === result.mode || one === settings || one === wanted;
  });
}
