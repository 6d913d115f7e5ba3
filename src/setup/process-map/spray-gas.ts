import type { Gas } from '../gas.js';
import type { Sourced } from '../sourced.js';
import type { MapMaterial } from './wires-of-map.js';

/** `no-source`: nothing read says that this gas carries axial spray, and nothing says that it does not. */
export type SprayGasWord = 'yes' | 'disputed' | 'no' | 'no-source' | 'not-stated';

/** Whether a gas carries axial spray with a wire, and on what that rests. */
export interface SprayGas extends Sourced {
  word: SprayGasWord;
  /** Share of cases in which spray is to be expected once current and volts are high enough; own choice. */
  share: number;
}

const SPRAY_GASES: Sourced = {
  source: 'AWS C5.6-94, Table 3, as adapted in a handbook (spray gases)',
  certainty: 'F2',
};
const HANDBOOK_LIMIT: Sourced = { source: 'MIG Welding Handbook, ch. 1 p. 7', certainty: 'F' };
const DIP_GAS: Sourced = {
  source: 'Modern Welding (2020), Fig. 8-16, and a gas table: short-circuiting of stainless steel',
  certainty: 'F',
};
const NONE: Sourced = { source: 'no source', certainty: 'CP' };

const yes = (on: Sourced): SprayGas => ({ word: 'yes', share: 1, ...on });
const noSource = (): SprayGas => ({ word: 'no-source', share: 0.1, ...NONE });

/** Oxygen up to which spray is listed; helium above which nothing read lists spray of steel, per cent. */
const MOST_OXYGEN = 5;
const MOST_HELIUM_STEEL = 40;
const MOST_HELIUM_ALUMINIUM = 75;

/**
 * Does this gas carry axial spray with this wire? Steel: argon with up to 15 % CO2 or 5 % oxygen; from
 * 25 % CO2 not; disputed between. Aluminium and bronze: argon, and argon with helium as far as listed.
 * Anything else has no source and is not expected to.
 */
export function sprayGas(gas: Gas | null, material: MapMaterial): SprayGas {
  if (gas === null) return { word: 'not-stated', share: 0.6, ...NONE };
  const he = gas.composition?.he ?? 0;
  const other = (gas.composition?.n2 ?? 0) + (gas.composition?.h2 ?? 0);
  if (other > 0 || gas.symbol === 'M11') return noSource();
  if (material === 'aluminium' || material === 'silicon-bronze') return inert(gas, he);
  if (gas.co2.min > 0 && he > MOST_HELIUM_STEEL) return { word: 'no', share: 0, ...DIP_GAS };
  if (he > MOST_HELIUM_STEEL || gas.symbol === 'I2') return noSource();
  if (gas.symbol === 'I3' && gas.composition === null) return noSource();
  return bySteelShares(gas, he);
}

function inert(gas: Gas, he: number): SprayGas {
  if (gas.co2.max > 0 || gas.o2.max > 0) return noSource();
  if (gas.symbol === 'I2' || he > MOST_HELIUM_ALUMINIUM) return noSource();
  return yes(SPRAY_GASES);
}

function bySteelShares({ co2, o2 }: Gas, he: number): SprayGas {
  if (co2.min >= 25) return { word: 'no', share: 0, ...HANDBOOK_LIMIT };
  if (o2.min > MOST_OXYGEN) return noSource();
  if (co2.max > 15) {
    const middle = (Math.max(15, co2.min) + Math.min(25, co2.max)) / 2;
    // Four of five at 15 %, hardly any at 25 %: own choice between sources that disagree.
    return { word: 'disputed', share: 0.9 - 0.07 * (middle - 15), ...HANDBOOK_LIMIT };
  }
  if (o2.max > MOST_OXYGEN) return { word: 'disputed', share: 0.6, ...NONE };
  const listed = he === 0 && (co2.max === 0) !== (o2.max === 0);
  return yes(listed ? SPRAY_GASES : { source: 'shop practice', certainty: 'CP' });
}
