import type { BandGas, SourceName } from '../messages/index.js';
import { MM_PER_INCH } from './quantities.js';
import { type Certainty, type Range, range, type Shown } from './sourced.js';
import type { WireMaterial } from './wire-words.js';

/** A published or taught least current for axial spray. */
export interface TransitionRow extends Shown {
  material: WireMaterial | 'silicon-bronze';
  diameterMm: number;
  gas: BandGas;
  co2: number;
  o2: number;
  currentA: Range;
}

type Rows = readonly (readonly [inch: number, amps: number, upTo?: number])[];

const rows = (
  material: TransitionRow['material'],
  gas: BandGas,
  [co2, o2]: readonly [number, number],
  [source, certainty]: readonly [SourceName, Certainty],
  values: Rows,
): TransitionRow[] =>
  values.map(([inch, amps, upTo]) => ({
    material,
    diameterMm: inch * MM_PER_INCH,
    gas,
    co2,
    o2,
    currentA: range(amps, upTo ?? amps),
    source,
    certainty,
  }));

const HANDBOOK = ['MIG Welding Handbook, Table 1-2', 'F'] as const;
const NOTE = ['a reference note on transfer modes', 'F2'] as const;

/** Transition currents. The rows of the base gas of each wire carry the estimate; the rest show the spread. */
export const TRANSITION_ROWS: readonly TransitionRow[] = [
  ...rows(
    'carbon-steel',
    '98Ar/2O2',
    [0, 2],
    ['AWS Welding Handbook vol. 2 (AWS C5.6)', 'F2'],
    [[0.023, 135]],
  ),
  ...rows('carbon-steel', '98Ar/2O2', [0, 2], HANDBOOK, [
    [0.03, 150],
    [0.035, 165],
    [0.045, 220],
    [0.052, 240],
    [0.0625, 275],
  ]),
  ...rows('stainless-steel', '99Ar/1O2', [0, 1], HANDBOOK, [
    [0.035, 170],
    [0.045, 225],
    [0.0625, 285],
  ]),
  ...rows('aluminium', 'Ar', [0, 0], HANDBOOK, [
    [0.03, 95],
    [0.046, 135],
    [0.0625, 180],
  ]),
  ...rows('silicon-bronze', 'Ar', [0, 0], HANDBOOK, [
    [0.035, 165],
    [0.045, 205],
    [0.0625, 270],
  ]),
  ...rows('carbon-steel', '90Ar/10CO2', [10, 0], NOTE, [
    [0.035, 175, 190],
    [0.045, 230, 240],
  ]),
  ...rows(
    'carbon-steel',
    '90Ar/10CO2',
    [10, 0],
    ['a quiz text on transfer modes', 'F2'],
    [[0.035, 200]],
  ),
  ...rows(
    'carbon-steel',
    '80Ar/20CO2',
    [20, 0],
    ['Methong et al., STWJ 23(1) (2018) 87–94', 'F'],
    [[1.2 / MM_PER_INCH, 330, 350]],
  ),
  ...rows(
    'carbon-steel',
    'Ar with little CO2 and O2',
    [8, 2],
    ["a gas supplier's welder's handbook, p. 7, chart as read here", 'F'],
    [[1 / MM_PER_INCH, 230]],
  ),
];

/**
 * Least currents of a prequalified procedure. Never used for a verdict: shown so that a reader
 * looks them up in the code.
 */
export const PREQUALIFIED_MINIMUM: readonly TransitionRow[] = rows(
  'carbon-steel',
  'prequalified GMAW',
  [0, 0],
  ['AWS D1.1:2025 Table 5.3 as quoted elsewhere; verify in the code', 'F2'],
  [
    [0.03, 190],
    [0.035, 210],
    [0.04, 230],
    [0.045, 260],
    [0.0625, 300],
  ],
);
