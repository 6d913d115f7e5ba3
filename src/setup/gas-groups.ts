import type { GasComposition, ShareRange } from './gas.js';

/** One group of ISO 14175:2008 Table 2. `above` is left out of the band, `upTo` belongs to it. */
export interface GasGroup {
  symbol: string;
  co2: Band | null;
  o2: Band | null;
  h2: Band | null;
}

interface Band {
  /** Lower end; part of the band unless `open`. */
  from: number;
  open: boolean;
  upTo: number;
}

const closed = (from: number, upTo: number): Band => ({ from, open: false, upTo });
const above = (from: number, upTo: number): Band => ({ from, open: true, upTo });

/**
 * Oxidising groups of ISO 14175:2008 Table 2, nominal volume per cent, read from a secondary copy
 * (certainty F2: check the standard before relying on a boundary). Argon may be replaced by helium.
 */
export const OXIDISING_GROUPS: readonly GasGroup[] = [
  { symbol: 'M11', co2: closed(0.5, 5), o2: null, h2: closed(0.5, 5) },
  { symbol: 'M12', co2: closed(0.5, 5), o2: null, h2: null },
  { symbol: 'M13', co2: null, o2: closed(0.5, 3), h2: null },
  { symbol: 'M14', co2: closed(0.5, 5), o2: closed(0.5, 3), h2: null },
  { symbol: 'M20', co2: above(5, 15), o2: null, h2: null },
  { symbol: 'M21', co2: above(15, 25), o2: null, h2: null },
  { symbol: 'M22', co2: null, o2: above(3, 10), h2: null },
  { symbol: 'M23', co2: closed(0.5, 5), o2: above(3, 10), h2: null },
  { symbol: 'M24', co2: above(5, 15), o2: closed(0.5, 3), h2: null },
  { symbol: 'M25', co2: above(5, 15), o2: above(3, 10), h2: null },
  { symbol: 'M26', co2: above(15, 25), o2: closed(0.5, 3), h2: null },
  { symbol: 'M27', co2: above(15, 25), o2: above(3, 10), h2: null },
  { symbol: 'M31', co2: above(25, 50), o2: null, h2: null },
  { symbol: 'M32', co2: null, o2: above(10, 15), h2: null },
  { symbol: 'M33', co2: above(25, 50), o2: above(2, 10), h2: null },
  { symbol: 'M34', co2: above(5, 25), o2: above(10, 15), h2: null },
  { symbol: 'M35', co2: above(25, 50), o2: above(10, 15), h2: null },
];

/** Symbols outside the oxidising groups that a user may state. */
export const OTHER_SYMBOLS = ['I1', 'I2', 'I3', 'C1', 'C2'] as const;

/**
 * ISO 14175 symbol of a composition. `Z` for anything outside the groups covered here (the
 * argon-hydrogen and nitrogen groups are not listed and come out as `Z`).
 */
export function gasSymbol(gas: GasComposition): string {
  if (gas.n2 > 0) return 'Z';
  if (gas.co2 === 0 && gas.o2 === 0 && gas.h2 === 0) return inertSymbol(gas);
  if (gas.co2 >= 50 && gas.ar === 0 && gas.he === 0 && gas.h2 === 0) {
    if (gas.o2 === 0) return 'C1';
    return gas.o2 >= 0.5 && gas.o2 <= 30 ? 'C2' : 'Z';
  }
  const group = OXIDISING_GROUPS.find(
    (row) => within(gas.co2, row.co2) && within(gas.o2, row.o2) && within(gas.h2, row.h2),
  );
  return group?.symbol ?? 'Z';
}

/** Shares of CO2 and O2 that a symbol leaves open (from the same table); null for symbols that name no composition. */
export function symbolRanges(symbol: string): { co2: ShareRange; o2: ShareRange } | null {
  const none = { min: 0, max: 0 };
  if (symbol === 'I1' || symbol === 'I2' || symbol === 'I3') return { co2: none, o2: none };
  if (symbol === 'C1') return { co2: { min: 100, max: 100 }, o2: none };
  if (symbol === 'C2') return { co2: { min: 70, max: 99.5 }, o2: { min: 0.5, max: 30 } };
  const group = OXIDISING_GROUPS.find((row) => row.symbol === symbol);
  if (group === undefined) return null;
  const range = (band: Band | null): ShareRange =>
    band === null ? none : { min: band.from, max: band.upTo };
  return { co2: range(group.co2), o2: range(group.o2) };
}

function inertSymbol(gas: GasComposition): string {
  if (gas.he === 0) return 'I1';
  if (gas.ar === 0) return 'I2';
  return gas.he >= 0.5 && gas.he <= 95 ? 'I3' : 'Z';
}

function within(share: number, band: Band | null): boolean {
  if (band === null) return share === 0;
  return (band.open ? share > band.from : share >= band.from) && share <= band.upTo;
}
