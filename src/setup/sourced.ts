/** How well a row of knowledge is backed. */
export const CERTAINTY = {
  F: 'read in the source named',
  F2: 'read in a secondary text; check the primary before relying on it',
  M: 'from memory of the source named',
  CP: 'common practice, no source',
  X: 'worked out here from other rows',
} as const;

export type Certainty = keyof typeof CERTAINTY;

/** What every row of knowledge carries. */
export interface Sourced {
  source: string;
  certainty: Certainty;
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
export function rangeText({ min, max }: Range, digits = 1): string {
  const [low, high] = [min, max].map((value) => String(Number(value.toFixed(digits))));
  return low === high ? low! : `${low}–${high}`;
}

/** `source (certainty in words)`, for messages and tables. */
export function authority({ source, certainty }: Sourced): string {
  return certainty === 'F' ? source : `${source} (${CERTAINTY[certainty]})`;
}
