import type { Mode } from '../../../core/index.js';
import type { FreeFlight } from '../run.js';
import type { GasSpec, Material } from '../scenario.js';

export type Range = readonly [low: number, high: number];

/**
 * How sure a row is. `F`: the number was read in the source named; `F2`: in a secondary text; `M`: from memory
 * of the source named; `CP`: common practice, no source; `X`: worked out here from the rows named.
 */
export type Certainty = 'F' | 'F2' | 'M' | 'CP' | 'X';

/** Wires and gases that a row speaks for. Ranges hold both ends. */
export interface WindowScope {
  mode: Mode;
  materials: readonly Material[];
  diameterMm: Range;
  /** Per cent of carbon dioxide in the gas. */
  co2Percent: Range;
  source: string;
  certainty: Certainty;
}

/** Where the mode is welded: mean of the burning arc, shorts included, at the feeder. */
export interface WorkingWindow extends WindowScope {
  currentA: Range;
  voltageV: Range;
}

/** What drops and shorts do in the mode. A quantity that the source does not give is left out. */
export interface EventWindow extends WindowScope {
  /** Only where the drops cross in this form. */
  form?: FreeFlight;
  shortRateHz?: Range;
  /** Coefficient of variation of the time from one short to the next. */
  shortIntervalCv?: Range;
  /** Median duration of a short. */
  shortS?: Range;
  dropRateHz?: Range;
  /** Mean drop diameter in wire diameters. */
  dropRatio?: Range;
  pulseRateHz?: Range;
  dropsPerPulse?: Range;
}

export const STEEL = ['carbon-steel'] as const;
export const STAINLESS = ['stainless-steel'] as const;
export const ALUMINIUM = ['aluminium'] as const;
export const ANY_WIRE: Range = [0.5, 1.7];
export const ANY_GAS: Range = [0, 100];

type Row = readonly [
  leastMm: number,
  mostMm: number,
  leastA: number,
  mostA: number,
  leastV: number,
  mostV: number,
];

/** Rows of one source, each wire diameters, amperes and volts. */
export function windowRows(
  scope: Omit<WindowScope, 'diameterMm'>,
  cells: readonly Row[],
): WorkingWindow[] {
  return cells.map(([leastMm, mostMm, leastA, mostA, leastV, mostV]) => ({
    ...scope,
    diameterMm: [leastMm, mostMm],
    currentA: [leastA, mostA],
    voltageV: [leastV, mostV],
  }));
}

/** What a window leaves on either side: volts, and shares of all other quantities. */
export const LEEWAY = { volts: 2, share: 0.15 } as const;

/** Whether the row speaks for this wire and gas. */
export function speaksFor(
  row: WindowScope,
  mode: Mode,
  wire: { material: Material; diameterMm: number },
  gas: Pick<GasSpec, 'co2Percent'>,
): boolean {
  return (
    row.mode === mode &&
    row.materials.includes(wire.material) &&
    within(wire.diameterMm, row.diameterMm) &&
    within(gas.co2Percent, row.co2Percent)
  );
}

const within = (value: number, [low, high]: Range): boolean => value >= low && value <= high;
