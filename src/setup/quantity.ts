import { ArcError } from '../core/index.js';

/** What a stated quantity may be: its units as factors to the base unit, and its plausible range. */
export interface QuantityRule {
  /** How the quantity is called in messages, e.g. `wire feed`. */
  name: string;
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
  hint?: string;
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
  if (unit === '' && !rule.bareAllowed) {
    throw refuse('missing-unit', `The ${rule.name} "${text}" has no unit.`, value, rule);
  }
  const factor = unit === '' ? 1 : rule.units[unit];
  if (factor === undefined) {
    throw refuse('bad-unit', `The ${rule.name} "${text}" has the unit "${unit}".`, value, rule);
  }
  const base = value * factor;
  if (!(base >= rule.min && base <= rule.max)) {
    const inBase = `${shortNumber(base)} ${rule.baseUnit}`;
    const same = factor === 1 ? '' : `, which is ${inBase},`;
    throw refuse(
      'impossible-value',
      `The ${rule.name} "${text}"${same} is not possible here.`,
      value,
      rule,
    );
  }
  return base;
}

function split(text: string, rule: QuantityRule): { value: number; unit: string } {
  const match = NUMBER.exec(text);
  if (match === null) {
    throw new ArcError({
      code: 'bad-quantity',
      what: `The ${rule.name} "${text}" is not a number with a unit.`,
      expected: `something like ${rule.example}, or unknown`,
      todo: 'Give one number and its unit.',
    });
  }
  const whole = Number(match[1]!.replace(',', '.'));
  const value = match[2] === undefined ? whole : whole / Number(match[2]);
  return { value, unit: match[3]!.trim().toLowerCase() };
}

function refuse(code: string, what: string, value: number, rule: QuantityRule): ArcError {
  const guesses = likelyMeanings(value, rule);
  const guess = guesses.length > 0 ? `Did you mean ${guesses.join(' or ')}?` : 'Check the value.';
  return new ArcError({
    code,
    what,
    expected:
      `a ${rule.name} from ${shortNumber(rule.min)} to ${shortNumber(rule.max)} ` +
      `${rule.baseUnit}, such as ${rule.example}, or unknown`,
    todo: rule.hint === undefined ? guess : `${guess} ${rule.hint}`,
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
