import type { Gas } from '../gas.js';
import { middle } from '../sourced.js';
import { baseRows, transitionBase } from '../transition.js';
import { TRANSITION_ROWS } from '../transition-rows.js';
import type { WireMaterial } from '../wire-words.js';
import { BOUNDARIES, type BoundaryName, type BoundaryRow } from './boundary-row.js';
import { BOUNDARY_ROWS, DIAMETER_SHIFT, GAS_SHIFT, SPRAY_LEAST_V } from './boundary-rows.js';
import { type SprayGas, sprayGas } from './spray-gas.js';
import { type Likely, likely, plus } from './spread.js';
import { type MapMaterial, solidTwin } from './wires-of-map.js';

/** Wire and gas that a map is made for. */
export interface MapWire {
  material: MapMaterial;
  /** Null where not stated: then the lines are wide enough for every size held. */
  diameterMm: number | null;
  gas: Gas | null;
}

/** A limit in current with its two sides: sources reach further up than down where CO2 repels the drop. */
export interface TransitionSpread {
  bestA: number;
  sdBelowA: number;
  sdAboveA: number;
  /** True where no published row fits and steel rows were taken in its place. */
  borrowed: boolean;
}

/** The map of one wire and gas: every boundary as a limit in volts for a current. */
export interface ProcessMap {
  wire: MapWire;
  spray: SprayGas;
  /** Null where the wire lies outside the published sizes. */
  transition: TransitionSpread | null;
  /** The rows the lines come from. */
  rows: Record<BoundaryName, BoundaryRow>;
  /** Limit in V at the feeder for a current in A. */
  limitV: (boundary: BoundaryName, currentA: number) => Likely;
}

/** Extension and composition move the transition by some 10 %, and sources differ by as much, each taken as two standard deviations; own choice. */
const TRANSITION_SHARE = 0.07;
/** 350 A measured at 20 % CO2 over the 98/2 value for 1.2 mm: what repulsion can add. */
const REPULSION_FACTOR = 1.55;

/** The map of a wire and gas. A gas that is not stated leaves the lines where they are and widens them. */
export function processMap(wire: MapWire): ProcessMap {
  const rows = Object.fromEntries(
    BOUNDARIES.map((name) => [name, rowOf(name, wire.material)]),
  ) as Record<BoundaryName, BoundaryRow>;
  const shift = plus(diameterShift(wire), gasShift(wire));
  const spray = sprayGas(wire.gas, wire.material);
  return {
    wire,
    spray,
    transition: transitionSpread(wire),
    rows,
    limitV: (boundary, currentA) => {
      const row = rows[boundary];
      const line = plus(likely(row.volts + row.slope * currentA, row.sdV), shift);
      const steel = wire.material !== 'aluminium' && wire.material !== 'silicon-bronze';
      if (boundary !== 'spray-floor' || !steel) return line;
      return line.mean >= SPRAY_LEAST_V.mean ? line : likely(SPRAY_LEAST_V.mean, SPRAY_LEAST_V.sd);
    },
  };
}

function rowOf(boundary: BoundaryName, material: MapMaterial): BoundaryRow {
  return BOUNDARY_ROWS.find(
    (row) => row.boundary === boundary && row.materials.includes(material),
  )!;
}

function diameterShift({ material, diameterMm }: MapWire): Likely {
  if (material === 'aluminium' || material === 'silicon-bronze') return likely(0, 0);
  // From 0.76 to 1.59 mm the lines move by some 3 V in all.
  if (diameterMm === null) return likely(0, 0.9);
  const away = diameterMm - DIAMETER_SHIFT.atMm;
  return likely(DIAMETER_SHIFT.vPerMm * away, Math.abs(away));
}

function gasShift({ material, gas }: MapWire): Likely {
  if (gas === null) return likely(0.3, 0.8);
  const he = gas.composition?.he ?? 0;
  const open = gas.composition === null && gas.symbol === 'I3' ? 0.8 : 0;
  if (material === 'aluminium' || material === 'silicon-bronze') {
    const row = GAS_SHIFT.heliumAluminium;
    return likely((row.volts * he) / row.atPercent, (row.sdV * he) / row.atPercent + open);
  }
  const middle = (gas.co2.min + gas.co2.max) / 2;
  const carbon = Math.max(0, middle - 20) / 80;
  return plus(
    likely(GAS_SHIFT.co2V * carbon, GAS_SHIFT.co2SdV * carbon),
    likely((GAS_SHIFT.heliumV * he) / 90, (GAS_SHIFT.heliumSdV * he) / 90 + open),
  );
}

function transitionSpread({ material, diameterMm, gas }: MapWire): TransitionSpread | null {
  const twin = solidTwin(material);
  const size = diameterMm ?? DIAMETER_SHIFT.atMm;
  const base = twin === null ? bronzeBase(size) : transitionBase(baseRows(twin), size);
  if (base === null) return null;
  const borrowed = material === 'metal-cored';
  // Every size from 0.76 to 1.59 mm: 150 to 275 A of steel in 98/2.
  const share = TRANSITION_SHARE + (borrowed ? 0.1 : 0) + (diameterMm === null ? 0.12 : 0);
  if (twin === null || twin === 'aluminium') {
    const he = (gas?.composition?.he ?? 0) / 100;
    const sd = base * (share + 0.15 * he);
    return { bestA: base, sdBelowA: sd, sdAboveA: sd, borrowed };
  }
  const co2 = gas === null ? 10 : (gas.co2.min + Math.min(gas.co2.max, 40)) / 2;
  const spreadOfGas = gas === null ? 8 : (Math.min(gas.co2.max, 40) - gas.co2.min) / 4;
  const rule = base * (1 + co2 / 100);
  const read = readRows(twin, size, co2);
  const bestA = mean([rule, ...read]);
  const apart = Math.max(0, ...[rule, ...read].map((one) => Math.abs(one - bestA)));
  const sd = Math.hypot(bestA * share, (base * spreadOfGas) / 100, apart / 2);
  const repelled = Math.max(0, base * REPULSION_FACTOR - bestA) / 2;
  const sdAboveA = co2 > 15 ? Math.max(sd, repelled * Math.min(1, (co2 - 15) / 5)) : sd;
  return { bestA, sdBelowA: sd, sdAboveA, borrowed };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

/** Currents read for this wire in a gas with about as much CO2, brought to its CO2 by the rule of 1 % for each per cent. */
function readRows(material: WireMaterial, diameterMm: number, co2: number): number[] {
  return TRANSITION_ROWS.filter(
    (row) =>
      row.material === material &&
      row.co2 > 0 &&
      // Above 15 % repulsion widens the upper side instead: one measurement stands against the shops.
      row.co2 <= 15 &&
      Math.abs(row.co2 - co2) <= 4 &&
      Math.abs(row.diameterMm - diameterMm) <= 0.06 * diameterMm,
  ).map((row) => (middle(row.currentA) * (100 + co2)) / (100 + row.co2));
}

/** Silicon bronze in argon has its own rows in the handbook's table. */
function bronzeBase(diameterMm: number): number | null {
  return transitionBase(
    TRANSITION_ROWS.filter((row) => row.material === 'silicon-bronze'),
    diameterMm,
  );
}
