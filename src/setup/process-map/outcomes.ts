import type { Mode } from '../../core/index.js';

/**
 * What a steady source gives at a working point, from too cold to too hot: the wire stubs into the pool,
 * dips regularly, throws large drops, sprays with shorts in between, sprays clean, burns with a long arc,
 * or burns back to the contact tip.
 */
export const OUTCOMES = [
  'stubbing',
  'dip',
  'globular',
  'spray-with-shorts',
  'spray',
  'long-arc',
  'burn-back',
] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** Likelihood of each outcome, 0 to 1; they add up to 1. */
export type Likelihoods = Record<Outcome, number>;

/** Outcomes that are faults whatever mode was wanted. */
export const FAULTS: readonly Outcome[] = ['stubbing', 'long-arc', 'burn-back'];

/** The outcome in which a mode is run well; pulsing is a matter of the programme and has no place of its own. */
export const OUTCOME_OF_MODE = {
  'short-circuit': 'dip',
  globular: 'globular',
  spray: 'spray',
} as const satisfies Partial<Record<Mode, Outcome>>;

export const noLikelihoods = (): Likelihoods =>
  Object.fromEntries(OUTCOMES.map((one) => [one, 0])) as Likelihoods;

/** Outcomes by likelihood, the likeliest first; equals keep the order of {@link OUTCOMES}. */
export function ranked(likelihoods: Likelihoods): { outcome: Outcome; likelihood: number }[] {
  return OUTCOMES.map((outcome) => ({ outcome, likelihood: likelihoods[outcome] })).sort(
    (a, b) => b.likelihood - a.likelihood,
  );
}

/**
 * Share of the arc time that each steady mode is expected to take. Stubbing is heard as short circuits;
 * spray with shorts is four fifths spray (common practice, no source); a long arc keeps the drops that
 * the current makes.
 */
export function modeShares(
  likelihoods: Likelihoods,
  sprayCurrent: number,
): Record<'short-circuit' | 'globular' | 'spray', number> {
  const long = likelihoods['long-arc'] + likelihoods['burn-back'];
  const shorts = likelihoods['spray-with-shorts'];
  return {
    'short-circuit': likelihoods.stubbing + likelihoods.dip + 0.2 * shorts,
    globular: likelihoods.globular + long * (1 - sprayCurrent),
    spray: likelihoods.spray + 0.8 * shorts + long * sprayCurrent,
  };
}
