import { ENGLISH, type SourceCertainty, type SourceName } from '../messages/index.js';

/**
 * How well a row of knowledge is backed: `F` read in the source named; `F2` read in a secondary text, to be
 * checked in the primary before relying on it; `M` from memory of the source named; `CP` common practice,
 * no source; `X` worked out here from other rows.
 */
export type Certainty = SourceCertainty;

/** What every row of knowledge carries. */
export interface Sourced {
  source: string;
  certainty: Certainty;
}

/** A row whose source is said to people, so that every language has a name for it. */
export interface Shown extends Sourced {
  source: SourceName;
}

/** A closed range; `min <= max`. */
export interface Range {
  min: number;
  max: number;
}

export const range = (min: number, max: number): Range => ({ min, max });

/** Middle of a range. */
export const middle = ({ min, max }: Range): number => (min + max) / 2;

/** True where the two ranges share at least a point. */
export const overlap = (a: Range, b: Range): boolean => a.min <= b.max && b.min <= a.max;

/** `24–26` in four digits at most; one number where both ends are the same. */
export const rangeText = (one: Range, digits = 1): string => ENGLISH.write.span(one, digits);
