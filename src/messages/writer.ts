import { inSystem, type Mode, type UnitQuantity, type UnitSystem, unitOf } from '../core/index.js';
import type { GasName, Message, Span } from './terms.js';

/** How a language writes numbers. */
export interface Numbers {
  /** As it stands, with all its digits. */
  plain(value: number): string;
  /** With this many digits behind the decimal sign. */
  fixed(value: number, digits: number): string;
  /** As `fixed`, without zeros at the end. */
  short(value: number, digits: number): string;
  /** With this many significant digits. */
  precise(value: number, digits: number): string;
  /** As `precise`, without zeros at the end. */
  figures(value: number, digits: number): string;
  /** A share (0 to 1) in whole per cent. */
  percent(share: number): string;
  /** `24–26`; one number where both ends read the same. One digit behind the sign unless told. */
  span(span: Span, digits?: number): string;
  /** A value or range in the unit of the reader's system, with that unit: `8–9.5 m/min` or `315–375 in/min`. */
  inUnits(value: number | Span, quantity: UnitQuantity): string;
}

/** What a language has to bring beside its sentences. */
export interface Words extends Numbers {
  mode(mode: Mode): string;
  /** One, two or more words joined as in "a and b". */
  and(words: readonly string[]): string;
  or(words: readonly string[]): string;
  gas(gas: GasName): string;
}

/** What a sentence is written with. */
export interface Writer extends Words {
  /** A sentence within the sentence. */
  say(message: Message): string;
}

/** The sentences of some rooms in one language: one function for each code. */
export type CatalogueOf<P> = { [C in keyof P]: (params: P[C], write: Writer) => string };

/** Numbers of a language that differs from another in its decimal sign alone, in metric units unless told. */
export function numbersWith(decimal: '.' | ',', system: UnitSystem = 'metric'): Numbers {
  const mark = (text: string): string => text.replace('.', decimal);
  const short = (value: number, digits: number): string =>
    mark(String(Number(value.toFixed(digits))));
  return {
    plain: (value) => mark(String(value)),
    fixed: (value, digits) => mark(value.toFixed(digits)),
    short,
    precise: (value, digits) => mark(value.toPrecision(digits)),
    figures: (value, digits) => mark(String(Number(value.toPrecision(digits)))),
    percent: (share) => `${Math.round(100 * share)} %`,
    span: ({ min, max }, digits = 1) => {
      const [low, high] = [short(min, digits), short(max, digits)];
      return low === high ? low : `${low}–${high}`;
    },
    inUnits: inUnitsOf(short, system),
  };
}

/** How a language writes quantities in a system of units, from how it writes numbers. */
export function inUnitsOf(short: Numbers['short'], system: UnitSystem): Numbers['inUnits'] {
  return (value, quantity) => {
    const { unit, digits } = unitOf(quantity, system);
    const ends = typeof value === 'number' ? [value, value] : [value.min, value.max];
    const [low, high] = ends.map((one) => short(inSystem(one, quantity, system), digits));
    return `${low === high ? low : `${low}–${high}`} ${unit}`;
  };
}
