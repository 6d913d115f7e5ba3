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

/** Added to a score where events are even, see {@link evenEvents}. */
const EVEN_EVENTS = 2.5;
/** Added for a leap of the level at one end and at both, unless the stretch is as impulsive as a fire. */
const LEAPS = [0, 2, 4];
/**
 * What each of the strongest signs gains beyond that when a recording is judged. With it one real arc (even
 * events, no edge in the recording) and sketched spray in the quiet (both edges) pass, and 13 of 432 drawn
 * sounds of other kinds, before 5.
 */
const STRONG_SIGN = 1.5;
/** Mean log10(kurtosis + 2) from which leaps prove nothing, since crackling leaps all the time. */
const IMPULSIVE = 1.8;
/**
 * The same from which a sound is hardly an arc, and what that costs. Measured: dip transfer 6 to 9, crackling
 * fire 450 to 1,900 (10th to 90th percentile of clips) as excess kurtosis.
 */
const FIERCE = 2.6;
const FIERCE_COST = 6;
/** Leap of an igniting arc within 50 ms, and fall of a broken one within a quarter of a second, dB. */
const LEAP_DB = 9;

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
  const even = evenOver(signs, names);
  const fierce = kurtosisOf(signs, names) > FIERCE ? FIERCE_COST : 0;
  return even + LEAPS[leapsOf(signs, names)]! - fierce;
}

/**
 * What even events, and both edges of a whole run, count beyond {@link positiveEvidence} when a recording
 * is judged. The threshold is set without it, by sounds of other kinds, which seldom show either.
 */
export function strongSigns(signs: StretchSigns, names: readonly string[]): number {
  const even = evenOver(signs, names) > 0;
  const whole = leapsOf(signs, names) === 2;
  return (even ? STRONG_SIGN : 0) + (whole ? STRONG_SIGN : 0);
}

/** Ends at which the level leaps; none where crackling leaps all the time. */
function leapsOf(signs: StretchSigns, names: readonly string[]): number {
  if (!(kurtosisOf(signs, names) <= IMPULSIVE)) return 0;
  return [signs.startDb, signs.stopDb].filter((db) => db >= LEAP_DB).length;
}

/** {@link evenEvents} of the means over a stretch. */
function evenOver({ vector }: StretchSigns, names: readonly string[]): number {
  return evenEvents((name) => vector.mean(names.indexOf(name)));
}

function kurtosisOf({ vector }: StretchSigns, names: readonly string[]): number {
  return vector.mean(names.indexOf('kurtosis'));
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
