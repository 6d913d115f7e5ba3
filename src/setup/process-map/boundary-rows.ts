import type { Sourced } from '../sourced.js';
import type { BoundaryRow } from './boundary-row.js';
import { OTHER_WIRES } from './boundary-rows-other.js';
import type { MapMaterial } from './wires-of-map.js';

/**
 * Conventional load voltage of the wire processes, `14 + 0.05·I` up to 600 A (IEC 60974-1, from memory):
 * a convention for testing power sources. It is drawn as a guide and gives the slope; it is no boundary.
 */
export const LOAD_LINE = {
  volts: 14,
  slope: 0.05,
  source: 'IEC 60974-1, conventional load voltage',
  certainty: 'M',
} as const satisfies Sourced & Record<string, unknown>;

const STEEL: readonly MapMaterial[] = ['carbon-steel', 'stainless-steel'];
const X = (source: string) => ({ source, certainty: 'X' as const });

/**
 * Where the outcomes end. The lines for steel are laid through the published windows by hand: `dip-top`
 * along the upper ends of dip settings, `spray-floor` below the spray windows, `stub` below the coldest
 * published dip settings, `long-arc` above the hottest windows.
 */
export const BOUNDARY_ROWS: readonly BoundaryRow[] = [
  {
    boundary: 'stub',
    materials: STEEL,
    volts: 10.2,
    slope: 0.038,
    sdV: 0.9,
    about: 'about 1 V below the coldest published dip settings (140 A at 16 V, 155 A at 17 V)',
    ...X("a manufacturer's MAG table (a)"),
  },
  {
    boundary: 'dip-top',
    materials: STEEL,
    volts: 17.3,
    slope: 0.025,
    sdV: 1,
    about: 'fillet settings end at 19.5 V with 110 A and 21 V with 140 A; whole windows at 22 V',
    ...X("a manufacturer's MAG table (a) and data sheet, Table 6-1"),
  },
  {
    boundary: 'spray-floor',
    materials: STEEL,
    volts: 9.8,
    slope: 0.05,
    sdV: 0.9,
    about:
      'the middles of the published spray windows lie near the load line; some 4 V below it the drops begin to touch',
    ...X("a manufacturer's data sheet, Table 6-2, and a reference note; the 4 V are own choice"),
  },
  {
    boundary: 'long-arc',
    materials: STEEL,
    volts: 15.8,
    slope: 0.057,
    sdV: 0.8,
    about: 'above the hottest published windows (300 A at 30 V, 325 A at 32 V)',
    ...X('Modern Welding (2020), Fig. 8-17'),
  },
  {
    boundary: 'burn-back',
    materials: STEEL,
    volts: 21.8,
    slope: 0.057,
    sdV: 1.2,
    about:
      'some 6 V above the long arc: 0.7 V for each of some 9 mm that the arc climbs to the contact tip',
    ...X('an arc field of 0.6–0.9 V/mm, from memory of Lancaster and Norrish'),
  },
  ...OTHER_WIRES,
];

/** Below this no published spray window of steel begins, V: 24 in the data sheets, 26 in a chart and a note. */
export const SPRAY_LEAST_V = {
  mean: 24.1,
  sd: 0.7,
  source: "a manufacturer's data sheet, Table 6-2; a gas supplier's handbook, p. 7",
  certainty: 'F',
} as const satisfies Sourced & Record<string, unknown>;

/**
 * The lines move with the wire: from the middles of the windows, 1.3 V up for 0.76 mm and 1.6 V down for
 * 1.59 mm, at equal current. Aluminium rows show none.
 */
export const DIAMETER_SHIFT = {
  atMm: 1.143,
  vPerMm: -3.5,
  source: 'middles of the published dip and spray windows of four sizes',
  certainty: 'X',
} as const satisfies Sourced & Record<string, unknown>;

/** What CO2 above 20 % and helium add to every line, V at 100 % CO2 and at 90 % helium. */
export const GAS_SHIFT = {
  co2V: 2,
  co2SdV: 0.7,
  heliumV: 2,
  heliumSdV: 1,
  co2: {
    source: 'shop guides: CO2 needs 1–3 V more than an argon mix at equal current',
    certainty: 'M',
  },
  helium: {
    source:
      'windows of stainless dip in 90 % helium (Modern Welding 2020, Fig. 8-16) against argon mixes',
    certainty: 'X',
  },
  heliumAluminium: {
    volts: 4,
    sdV: 1.5,
    atPercent: 75,
    source: 'common practice, no source: helium raises the arc voltage by some volts',
    certainty: 'CP',
  },
} as const;
