import { type RunVector, runVectorLength } from './run-vector.js';
import { type Scorer, score } from './scorer.js';

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

/** Added to a score where events are even, see {@link evenEvents}; 2.5 to 3.5 do alike, and with 3.5 the one real arc passes. */
const EVEN_EVENTS = 3.5;
/**
 * Added for a leap of the level at either end, unless the stretch is as impulsive as a fire: nothing up to the
 * first height in dB, all from the second on. Of 23 combinations this let the most held-out arcs pass, nearly: a
 * bound at 9 dB gave one point in a hundred less, 3.5 from 8 to 14 dB six.
 */
const LEAP_DB = [8, 20] as const;
const LEAP = 2;
/** Mean log10(kurtosis + 2) from which leaps prove nothing, since crackling leaps all the time. */
const IMPULSIVE = 1.8;
/**
 * The same from which a sound is hardly an arc, and what that costs. Measured: dip transfer 6 to 9, crackling
 * fire 450 to 1,900 (10th to 90th percentile of clips) as excess kurtosis.
 */
const FIERCE = 2.6;
const FIERCE_COST = 6;

/** A window of digital silence shows no feature at all. */
export function isSilent(values: Float64Array): boolean {
  return values.every((value) => Number.isNaN(value));
}

/**
 * Log-odds, before calibration, that a window lies in an arc; −Infinity for digital silence.
 * @param names names of the window features, in the order of the values
 */
export function windowArcScore(
  scorer: Scorer,
  names: readonly string[],
  values: Float64Array,
): number {
  if (isSilent(values)) return -Infinity;
  return score(scorer, values)[0]! + evenEvents((name) => values[names.indexOf(name)]!);
}

/**
 * Positive evidence beside the fitted score: even events on a broad flat band, or a stretch that leaps
 * up and breaks off. Bounds and weights were set on physics, on drawn arcs held out by family and on clips
 * of folds 1 and 2 of a collection of other sounds; those of fold 3 were only scored.
 * @param names names of the window features, in the order of the vector
 */
export function positiveEvidence(signs: StretchSigns, names: readonly string[]): number {
  const even = evenEvents((name) => signs.vector.mean(names.indexOf(name)));
  const kurtosis = signs.vector.mean(names.indexOf('kurtosis'));
  const leaps = kurtosis <= IMPULSIVE ? leapOf(signs.startDb) + leapOf(signs.stopDb) : 0;
  return even + leaps - (kurtosis > FIERCE ? FIERCE_COST : 0);
}

function leapOf(db: number): number {
  const [from, to] = LEAP_DB;
  return LEAP * Math.max(0, Math.min(1, (db - from) / (to - from)));
}

/**
 * Score for even events on a flat broad band, which hardly any sound but an arc was found to have: a line
 * stands clear above 22 Hz, the count of onsets agrees with it, the onsets are more even than chance, and
 * the band they ride on is flat as that of an arc (engines and rotors fail there). 0 without them.
 * @param feature value of a window feature, or its mean over a stretch, by name
 */
export function evenEvents(feature: (name: string) => number): number {
  const even =
    feature('lineProminence') >= 1.15 &&
    feature('lineRate') >= 4.5 &&
    feature('rateDisagreement') <= 0.6 &&
    feature('onsetDispersion') <= -0.3 &&
    feature('flatness') >= 0.65;
  return even ? EVEN_EVENTS : 0;
}
