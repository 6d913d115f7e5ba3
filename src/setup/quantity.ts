import type { ArcError } from '../core/index.js';
import { type Made, message, type QuantityName, refusal } from '../messages/index.js';

/** What a stated quantity may be: its units as factors to the base unit, and its plausible range. */
export interface QuantityRule {
  /** How the quantity is called in messages, e.g. `wire feed`. */
  name: QuantityName;
  /** Base unit in which the value is kept, e.g. `m/min`. */
  baseUnit: string;
  /** Lower-case spellings of each unit with the factor to the base unit. */
  units: Readonly<Record<string, number>>;
  /** Plausible range in the base unit, both ends allowed. */
  min: number;
  max: number;
  /** True where a bare number can only mean the base unit (volts, amperes). */
  bareAllowed: boolean;
  /** A right example for messages. */
  example: string;
  /** A usual cause of refused values, said after the guess. */
  hint?: 'dial-shows-taps' | 'measure-while-welding';
}

const NUMBER = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))(?:\s*\/\s*(\d+(?![\d.]*\s*\/)))?\s*(.*)$/u;

/**
 * Reads a number with its unit, such as `1.2mm`, `1,2 mm`, `.045"`, `1/16in` or `240ipm`, into the
 * base unit. The value is never clamped: one outside the plausible range is an error that guesses
 * the mistake (wrong unit, slipped decimal point).
 */
export function parseQuantity(raw: string | number, rule: QuantityRule): number {
  const text = String(raw).trim();
  const stated = { quantity: rule.name, stated: text };
  const { value, unit } = split(text, rule);
  if (unit === '' && !rule.bareAllowed) {
    throw refuse('missing-unit', message('value-without-unit', stated), value, rule);
  }
  const factor = unit === '' ? 1 : rule.units[unit];
  if (factor === undefined) {
    throw refuse('bad-unit', message('value-of-wrong-unit', { ...stated, unit }), value, rule);
  }
  const base = value * factor;
  if (!(base >= rule.min && base <= rule.max)) {
    const is = factor === 1 ? null : { value: base, unit: rule.baseUnit };
    throw refuse('impossible-value', message('value-impossible', { ...stated, is }), value, rule);
  }
  return base;
}

function split(text: string, rule: QuantityRule): { value: number; unit: string } {
  const match = NUMBER.exec(text);
  if (match === null) {
    throw refusal(
      'bad-quantity',
      message('value-no-number', { quantity: rule.name, stated: text }),
      message('expect-like', { example: rule.example }),
      message('number-with-unit'),
    );
  }
  const whole = Number(match[1]!.replace(',', '.'));
  const value = match[2] === undefined ? whole : whole / Number(match[2]);
  return { value, unit: match[3]!.trim().toLowerCase() };
}

function refuse(code: string, what: Made, value: number, rule: QuantityRule): ArcError {
  const { name: quantity, min, max, baseUnit: unit, example, hint } = rule;
  const guesses = likelyMeanings(value, rule);
  const guess = guesses.length > 0 ? message('did-you-mean', { guesses }) : message('check-value');
  const expected = message('expect-quantity', { quantity, min, max, unit, example });
  const more = hint === undefined ? [] : [message(hint)];
  return refusal(code, what, expected, guess, ...more);
}

/** Readings of the same digits that would be plausible: other units first, then a slipped point. */
function likelyMeanings(value: number, rule: QuantityRule): string[] {
  const seen = new Set<number>();
  const fits = (number: number, factor: number): boolean => {
    const base = number * factor;
    if (seen.has(factor) || !(base >= rule.min && base <= rule.max)) return false;
    seen.add(factor);
    return true;
  };
  const units = Object.entries(rule.units);
  const asGiven = units
    .filter(([, factor]) => fits(value, factor))
    .map(([unit]) => `${shortNumber(value)}${unit}`);
  if (asGiven.length > 0) return asGiven.slice(0, 2);
  // Thousandths of an inch are said without the point: "045" for 0.045 in.
  const inch = rule.units['in'];
  if (inch !== undefined && value < 100 && fits(value / 1000, inch))
    return [`${shortNumber(value / 1000)}in`];
  return [0.1, 0.001]
    .map((shift) => value * shift)
    .filter((number) => number >= rule.min && number <= rule.max)
    .map((number) => `${shortNumber(number)}${rule.baseUnit}`)
    .slice(0, 1);
}

/** Four significant digits without trailing zeros. */
export function shortNumber(value: number): string {
  return Number.isFinite(value) ? String(Number(value.toPrecision(4))) : 'unknown';
}
