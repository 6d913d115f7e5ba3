import { ArcError } from '../core/index.js';
import { parseQuantity, type QuantityRule } from '../setup/index.js';
import type { Limit } from './types.js';

type Written = Partial<Record<'min' | 'max' | 'nominal' | 'tolerance', string>>;

/** Reads a limit into base units; every number carries its unit. @throws ArcError naming `field` */
export function readLimit(field: string, written: Written, rule: QuantityRule): Limit {
  const exact = { ...rule, bareAllowed: false };
  const one = (key: 'min' | 'max' | 'nominal'): number | null =>
    written[key] === undefined
      ? null
      : named(`${field}.${key}`, () => parseQuantity(written[key]!, exact));
  const nominal = one('nominal');
  if (nominal !== null) {
    const by = toleranceOf(field, written.tolerance ?? '', nominal, exact);
    return { min: nominal - by, max: nominal + by };
  }
  const [min, max] = [one('min'), one('max')];
  if (min !== null && max !== null && min > max) throw crossed(field, written);
  return { min, max };
}

function toleranceOf(field: string, text: string, nominal: number, rule: QuantityRule): number {
  const percent = /^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/u.exec(text)?.[1];
  if (percent !== undefined) return (nominal * Number(percent.replace(',', '.'))) / 100;
  return named(`${field}.tolerance`, () => parseQuantity(text, { ...rule, min: 0 }));
}

/** Lets an error of a single value say which field it stands in. */
export function named<T>(field: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof ArcError) error.message = `${field}: ${error.message}`;
    throw error;
  }
}

function crossed(field: string, { min, max }: Written): ArcError {
  return new ArcError({
    code: 'bad-procedure',
    what: `${field} is from "${min}" to "${max}", which holds nothing.`,
    expected: 'min not above max',
    todo: 'Exchange the two, or correct their units.',
  });
}
