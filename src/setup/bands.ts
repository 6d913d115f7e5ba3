import type { Mode } from '../core/index.js';
import type { BandGas, BandRemark, SourceName } from '../messages/index.js';
import { MM_PER_INCH } from './quantities.js';
import { type Certainty, type Range, range, type Shown } from './sourced.js';
import type { WireMaterial } from './wire-words.js';

/** A published or taught window of one mode. Tables rarely say where their volts were read. */
export interface BandRow extends Shown {
  mode: Mode;
  material: WireMaterial | 'any';
  /** Null where the source names no wire. */
  diameterMm: Range | null;
  /** The source's own words for the gas. */
  gas: BandGas;
  /** CO2 in per cent for which the row speaks. */
  co2: Range;
  currentA: Range | null;
  voltageV: Range | null;
  feedMPerMin: Range | null;
  /** True where the row is a whole window of the mode, false where it is a setting for one joint. */
  whole: boolean;
  /** What the source remarks on the row. */
  about: BandRemark | '';
}

type Pair = readonly [number, number];
export interface Scope {
  mode: Mode;
  material: WireMaterial | 'any';
  gas: BandGas;
  co2: Pair;
  source: SourceName;
  certainty: Certainty;
  whole: boolean;
}

/** A row of a table: diameters in mm, amperes, volts, feed in inches a minute, remark. */
export type Cells = readonly [
  mm: Pair | null,
  amps: Pair | null,
  volts: Pair | null,
  ipm?: Pair | null,
  about?: BandRemark,
];

const pair = (cells: Pair | null | undefined, factor = 1): Range | null =>
  cells == null ? null : range(cells[0] * factor, cells[1] * factor);

/** Rows of one table that share mode, gas and source. */
export function bandRows(scope: Scope, cells: readonly Cells[]): BandRow[] {
  return cells.map(([mm, amps, volts, ipm, about]) => ({
    ...scope,
    co2: range(...scope.co2),
    diameterMm: pair(mm),
    currentA: pair(amps),
    voltageV: pair(volts),
    feedMPerMin: pair(ipm, MM_PER_INCH / 1000),
    about: about ?? '',
  }));
}
