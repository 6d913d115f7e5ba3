import { ArcError } from '../../../core/index.js';

/** A number given on the command line, within its range. Throws ArcError `bad-option` otherwise. */
export function numberOption(
  options: Record<string, unknown>,
  name: string,
  range: { low: number; high: number; whole?: boolean },
): number {
  const text = String(options[name]).trim();
  const value = text === '' ? Number.NaN : Number(text);
  const fits = value >= range.low && value <= range.high;
  if (fits && (range.whole !== true || Number.isInteger(value))) return value;
  throw new ArcError({
    code: 'bad-option',
    what: `--${name} was given as "${text}".`,
    expected: `a ${range.whole === true ? 'whole ' : ''}number from ${range.low} to ${range.high}`,
    todo: `Correct --${name}.`,
  });
}
