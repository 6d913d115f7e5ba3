import type { ArcError } from '../core/index.js';
import { type Made, message, type QuantityName, refuse } from '../messages/index.js';

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
  hint?: 'tap-numbers' | 'measure-while-welding';
}

const NUMBER = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))(?:\s*\/\s*(\d+(?![\d.]*\s*\/)))?\s*(.*)$/u;

/**
 * Reads a number with its unit, such as `1.2mm`, `1,2 mm`, `.045"`, `1/16in` or `240ipm`, into the
 * base unit. The value is never clamped: one outside the plausible range is an error that guesses
 * the mistake (wrong unit, slipped decimal point).
 */
export function parseQuantity(raw: string | number, rule: QuantityRule): number {
  const text = String(raw).trim();
  const { value, unit } = split(text, rule);
  const about = { quantity: rule.name, stated: text };
  if (unit === '' && !rule.bareAllowed) {
    throw wrong('missing-unit', message('quantity-without-unit', about), value, rule);
  }
  const factor = unit === '' ? 1 : rule.units[unit];
  if (factor === undefined) {
    throw wrong('bad-unit', message('quantity-wrong-unit', { ...about, unit }), value, rule);
  }
  const base = value * factor;
  if (!(base >= rule.min && base <= rule.max)) {
    const inBase =
      factor === 1 ? null : { value: Number.isFinite(base) ? base : null, unit: rule.baseUnit };
    const what = message('quantity-impossible', { ...about, inBase });
    throw wrong('impossible-value', what, value, rule);
  }
  return base;
}

function split(text: string, rule: QuantityRule): { value: number; unit: string } {
  const match = NUMBER.exec(text);
  if (match === null) {
    throw refuse('bad-quantity', {
      what: message('quantity-no-number', { quantity: rule.name, stated: text }),
      expected: message('expected-like', { example: rule.example }),
      todo: message('give-number-and-unit'),
    });
  }
  const whole = Number(match[1]!.replace(',', '.'));
  const value = match[2] === undefined ? whole : whole / Number(match[2]);
  return { value, unit: match[3]!.trim().toLowerCase() };
}

function wrong(code: string, what: Made, value: number, rule: QuantityRule): ArcError {
  const { name: quantity, min, max, baseUnit: unit, example, hint = null } = rule;
  const meanings = likelyMeanings(value, rule);
  return refuse(code, {
    what,
    expected: message('expected-quantity', { quantity, min, max, unit, example }),
    todo: message('did-you-mean', { meanings, hint }),
  });
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
