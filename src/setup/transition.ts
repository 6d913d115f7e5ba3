import { message } from '../messages/index.js';
import { sprayInGas } from './co2-limit.js';
import type { Gas } from './gas.js';
import { type Range, range } from './sourced.js';
import { TRANSITION_ROWS, type TransitionRow } from './transition-rows.js';
import type { WireMaterial } from './wire-words.js';

/** Where spray begins in current, with what the sources leave open. */
export interface Transition {
  /** Below `min` no source gives spray, above `max` all do. */
  currentA: Range;
  /** The single best figure. */
  bestA: number;
  rows: readonly TransitionRow[];
  text: string;
  /** The sentence of `text`. */
  code: string;
  params: Record<string, unknown>;
}

/** Extension and composition of the wire move the transition; ±10 % is taken for them (own choice). */
const OPEN_SHARE = 0.1;
/** 350 A measured at 20 % CO2 over the 98/2 value for 1.2 mm: what repulsion can add. */
const REPULSION_FACTOR = 1.55;

/**
 * Transition current by wire and gas. Null where the gas gives no spray, or wire or gas is
 * unknown, or the diameter lies outside the published rows.
 *
 * Steel starts from the 98/2 rows and adds about 1 % for each per cent of CO2 (worked out here);
 * above 15 % CO2 the upper end follows the measured 330–350 A at 20 %, since that rule fails there.
 */
export function transitionCurrent(
  material: WireMaterial,
  diameterMm: number,
  gas: Gas,
): Transition | null {
  const word = sprayInGas(gas);
  if (word === 'no' || word === 'unknown') return null;
  const base = transitionBase(baseRows(material), diameterMm);
  if (base === null) return null;
  const bestA = base * (1 + (gas.co2.min + gas.co2.max) / 200);
  const low = base * (1 + gas.co2.min / 100) * (1 - OPEN_SHARE);
  const plain = base * (1 + gas.co2.max / 100) * (1 + OPEN_SHARE);
  const high = word === 'disputed' ? Math.max(plain, base * REPULSION_FACTOR) : plain;
  const rows = TRANSITION_ROWS.filter(
    (row) => row.material === material && Math.abs(row.diameterMm - diameterMm) / diameterMm < 0.12,
  );
  return {
    currentA: range(low, high),
    bestA,
    rows,
    ...message('spray-begins', { currentA: range(low, high) }),
  };
}

/** The rows that carry the estimate: the base gas of each material. */
export function baseRows(material: WireMaterial): TransitionRow[] {
  const gas = { 'carbon-steel': '98Ar/2O2', 'stainless-steel': '99Ar/1O2', aluminium: 'Ar' };
  return TRANSITION_ROWS.filter((row) => row.material === material && row.gas === gas[material]);
}

/** Linear between rows, and up to 8 % beyond the first and last (1.2 mm sold for 3/64 in). */
export function transitionBase(rows: readonly TransitionRow[], diameterMm: number): number | null {
  const sorted = [...rows].sort((a, b) => a.diameterMm - b.diameterMm);
  const first = sorted[0];
  const last = sorted.at(-1);
  if (first === undefined || last === undefined) return null;
  if (diameterMm < first.diameterMm * 0.92 || diameterMm > last.diameterMm * 1.08) return null;
  const upper = Math.min(
    Math.max(
      1,
      sorted.findIndex((row) => row.diameterMm >= diameterMm),
    ),
    sorted.length - 1,
  );
  const index = diameterMm > last.diameterMm ? sorted.length - 1 : upper;
  const a = sorted[index - 1]!;
  const b = sorted[index]!;
  const part = (diameterMm - a.diameterMm) / (b.diameterMm - a.diameterMm);
  return a.currentA.min + part * (b.currentA.min - a.currentA.min);
}
