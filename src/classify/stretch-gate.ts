import { type RunVector, runVectorLength } from './run-vector.js';

/** What is known of a stretch when it is decided whether it was an arc. */
export interface StretchSigns {
  /** Means and spreads of its windows' features. */
  vector: RunVector;
  /** Leaps of the level at the two edges, dB; 0 where none was seen. */
  startDb: number;
  stopDb: number;
}

/** Length of {@link stretchVector} for a number of window features. */
export function stretchVectorLength(features: number): number {
  return runVectorLength(features) + 2;
}

/**
 * The signs of a stretch as one vector. An arc leaps up within milliseconds and stops as sharply, which
 * weather and engines do not; alone that proves nothing, since tools are switched too.
 */
export function stretchVector({ vector, startDb, stopDb }: StretchSigns): Float64Array {
  const values = vector.values();
  const all = new Float64Array(values.length + 2);
  all.set(values);
  all[values.length] = Math.min(40, startDb);
  all[values.length + 1] = Math.min(40, stopDb);
  return all;
}

/** Added to the score of a stretch whose events are even, see {@link hasEvenEvents}. */
const EVEN_EVENTS = 4;
/** Added for a leap of the level at one end and at both, unless the stretch is as impulsive as a fire. */
const LEAPS = [0, 1, 4.5];
/** Mean log10(kurtosis + 2) from which leaps prove nothing, since crackling leaps all the time. */
const IMPULSIVE = 1.8;
/**
 * The same from which a sound is hardly an arc, and what that costs. Measured: dip transfer 6 to 9, crackling
 * fire 450 to 1,900 (10th to 90th percentile of clips) as excess kurtosis.
 */
const FIERCE = 2.6;
const FIERCE_COST = 6;
/** Leap of an igniting and of a broken arc, dB within 50 ms. */
const LEAP_DB = 9;

/**
 * Positive evidence beside the fitted score: even events on a broad flat band, or a stretch that leaps
 * up and breaks off. The bounds were set on physics and on clips of folds 1 and 2 of a collection of
 * other sounds; those of fold 3 were only scored.
 * @param names names of the window features, in the order of the vector
 */
export function positiveEvidence(signs: StretchSigns, names: readonly string[]): number {
  const even = hasEvenEvents(signs.vector, names) ? EVEN_EVENTS : 0;
  const kurtosis = signs.vector.mean(names.indexOf('kurtosis'));
  const ends = [signs.startDb, signs.stopDb].filter((db) => db >= LEAP_DB).length;
  const leaps = kurtosis <= IMPULSIVE ? LEAPS[ends]! : 0;
  const fierce = kurtosis > FIERCE ? FIERCE_COST : 0;
  return even + leaps - fierce;
}

/**
 * A line stands clear above 22 Hz, the count of onsets agrees with it, the onsets are more even than
 * chance, and the band they ride on is flat as that of an arc (engines and rotors fail there).
 */
function hasEvenEvents(vector: RunVector, names: readonly string[]): boolean {
  const mean = (name: string) => vector.mean(names.indexOf(name));
  return (
    mean('lineProminence') >= 1.15 &&
    mean('lineRate') >= 4.5 &&
    mean('rateDisagreement') <= 0.6 &&
    mean('onsetDispersion') <= -0.3 &&
    mean('flatness') >= 0.65
  );
}
