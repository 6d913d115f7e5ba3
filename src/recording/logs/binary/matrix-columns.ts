/** A matrix with no more than this many rows or columns is a set of series side by side. */
const MAX_SIDE_BY_SIDE = 64;

/** One series within an array: where it starts and how far apart its values lie, counted in values. */
export interface Series {
  /** Undefined when the array is a single series. */
  number?: number;
  start: number;
  step: number;
  rows: number;
}

/**
 * The series of an array of the given shape: the longest side is time. Empty for scalars, for more than
 * two real dimensions, and for pictures.
 *
 * @param rowMajor true when the last index runs fastest (C, HDF5), false for MATLAB and Fortran
 */
export function seriesOf(shape: readonly number[], rowMajor: boolean): Series[] {
  const sides = shape.filter((side) => side !== 1);
  if (sides.some((side) => !Number.isSafeInteger(side) || side < 0)) return [];
  const [first = 0, second] = sides;
  if (sides.length === 1) return first > 1 ? [{ start: 0, step: 1, rows: first }] : [];
  if (sides.length !== 2 || second === undefined) return [];
  const rows = Math.max(first, second);
  const count = Math.min(first, second);
  if (count < 1 || count > MAX_SIDE_BY_SIDE) return [];
  // Time along the fastest index: the series lie one after the other, else they are interleaved.
  const timeIsFirst = first >= second;
  const interleaved = timeIsFirst === rowMajor;
  return Array.from({ length: count }, (_, j) => ({
    number: j + 1,
    start: interleaved ? j : j * rows,
    step: interleaved ? count : 1,
    rows,
  }));
}
