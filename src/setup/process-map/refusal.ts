import type { Mode } from '../../core/index.js';
import type { Polarity, SourceKind } from '../choices.js';
import type { ProcessMap } from './boundary-lines.js';
import type { MapMaterial } from './wires-of-map.js';

/** Why a mode cannot be reached, whatever volts and feed are set. */
export const REFUSALS = ['gas', 'gas-no-source', 'wire', 'source', 'polarity'] as const;
export type RefusalReason = (typeof REFUSALS)[number];

/** A refusal with the nearest thing that can. */
export interface Refusal {
  because: RefusalReason;
  /** Mode that this set-up can give instead; null where nothing is known. */
  nearestMode: Mode | null;
  /** Gas that carries the wanted mode with this wire, as `parseGas` reads it; null where gas is not the reason. */
  nearestGas: string | null;
  /** Sizes in mm for which rows are held; null where the wire is not the reason. */
  sizesMm: readonly [number, number] | null;
}

/** Gases that carry axial spray, nearest to what a shop of that wire has at hand. */
const SPRAY_GAS_OF: Readonly<Record<MapMaterial, string>> = {
  'carbon-steel': 'Ar+15CO2',
  'metal-cored': 'Ar+15CO2',
  'stainless-steel': 'Ar+2O2',
  aluminium: 'Ar',
  'silicon-bronze': 'Ar',
};

const SIZES_MM: Readonly<Record<MapMaterial, readonly [number, number]>> = {
  'carbon-steel': [0.8, 1.6],
  'stainless-steel': [0.9, 1.6],
  aluminium: [0.8, 1.6],
  'silicon-bronze': [0.9, 1.6],
  'metal-cored': [0.8, 1.6],
};

/** The reason why a mode cannot be had, or null. */
export function refuse(
  map: ProcessMap,
  wanted: Mode,
  stated: { source: SourceKind | null; polarity: Polarity | null },
): Refusal | null {
  const { material } = map.wire;
  const nothing = { nearestMode: null, nearestGas: null, sizesMm: null };
  if (stated.polarity === 'dcen' || stated.polarity === 'ac') {
    return { ...nothing, because: 'polarity' };
  }
  const sprays = wanted === 'spray' || wanted === 'pulsed-spray';
  if (!sprays) return null;
  const { word } = map.spray;
  if (word === 'no' || word === 'no-source') {
    const because = word === 'no' ? 'gas' : 'gas-no-source';
    const nearestGas = SPRAY_GAS_OF[material];
    return { ...nothing, because, nearestMode: 'short-circuit', nearestGas };
  }
  if (wanted === 'pulsed-spray') {
    if (stated.source !== 'steady') return null;
    return { ...nothing, because: 'source', nearestMode: 'spray' };
  }
  if (map.transition !== null) return null;
  const sizesMm = SIZES_MM[material];
  return { ...nothing, because: 'wire', nearestMode: 'short-circuit', sizesMm };
}
