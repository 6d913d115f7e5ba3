import { inSystem, LB_KG, type UnitQuantity, unitOf } from '../../core/index.js';
import type { LimitRow, WeldRecord } from '../../record/index.js';
import type { Words } from '../view/index.js';
import type { RecordWords } from './words/index.js';

/** Limits whose unit goes by the reader's system. */
const SHOWN_AS: Partial<Record<LimitRow['limit'], UnitQuantity>> = {
  wireFeed: 'feed',
  travelSpeed: 'travel',
  stickOut: 'length',
  heatInput: 'energy',
  wire: 'diameter',
  plate: 'length',
};

/** A figure of a limit with its unit. */
export function figureText(
  limit: LimitRow['limit'],
  value: number | { min: number; max: number },
  words: Words,
): string {
  const { write } = words.sentences;
  const ends = typeof value === 'number' ? { min: value, max: value } : value;
  if (limit === 'modeShare') return write.percent(ends.min);
  if (limit === 'longestDeparture') return `${write.short(ends.min, 1)} s`;
  if (limit === 'volts') return `${write.span(ends, 1)} V`;
  if (limit === 'amperes') return `${write.span(ends, 0)} A`;
  const quantity = SHOWN_AS[limit];
  return quantity ? inUnits(ends, quantity, words) : write.span(ends, 2);
}

/** With a digit more than elsewhere in metric units, so that a limit and what is just outside it differ. */
function inUnits(ends: { min: number; max: number }, quantity: UnitQuantity, words: Words): string {
  const { unit, digits } = unitOf(quantity, words.units);
  const [min, max] = [ends.min, ends.max].map((one) => inSystem(one, quantity, words.units));
  const more = words.units === 'metric' && quantity !== 'travel' && quantity !== 'diameter' ? 1 : 0;
  return `${words.sentences.write.span({ min: min!, max: max! }, digits + more)} ${unit}`;
}

/** What is allowed: "26–30 V", "at least 90 %", or a word. */
export function allowedText({ limit, allowed }: LimitRow, words: Words, own: RecordWords): string {
  if (typeof allowed === 'string') return wordOf(allowed, own);
  const { min, max } = allowed;
  if (min !== null && max !== null) return figureText(limit, { min, max }, words);
  if (min !== null) return own.atLeast(figureText(limit, min, words));
  return max === null ? '–' : own.atMost(figureText(limit, max, words));
}

/** What was found, or a dash. */
export function foundText({ limit, figure }: LimitRow, words: Words, own: RecordWords): string {
  if (figure === null) return '–';
  return typeof figure === 'string' ? wordOf(figure, own) : figureText(limit, figure, words);
}

/** A word of a figure in the reader's language; what is no such word stays as it was written. */
const wordOf = (text: string, own: RecordWords): string => own.figureWords[text] ?? text;

/** "measured at the feeder", or a dash. */
export function knownText({ basis, place, limit }: LimitRow, own: RecordWords): string {
  if (basis === null) return '–';
  const where = limit === 'volts' && place !== null ? ` ${own.places[place]}` : '';
  return `${own.basis[basis]}${where}`;
}

/** Mass in kilograms or pounds. */
export function massText(kg: { min: number; max: number } | number, words: Words): string {
  const inch = words.units === 'inch';
  const factor = inch ? 1 / LB_KG : 1000;
  const ends = typeof kg === 'number' ? { min: kg, max: kg } : kg;
  const span = { min: ends.min * factor, max: ends.max * factor };
  return `${words.sentences.write.span(span, inch ? 3 : 1)} ${inch ? 'lb' : 'g'}`;
}

/** When a weld was made, in the order of the calendar: 2026-12-01 07:04:10. */
export function timeText(weldedAt: WeldRecord['weldedAt']): string {
  return weldedAt === null ? '–' : weldedAt.time.replace('T', ' ').replace(/(\.\d+)?Z$/u, ' UTC');
}
