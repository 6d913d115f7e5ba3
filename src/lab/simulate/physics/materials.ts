import type { GasSpec, Material, WireSpec } from '../scenario.js';

/** Properties of a wire metal near its melting point. kg/m³ and N/m. */
export interface MetalProperties {
  solidDensity: number;
  liquidDensity: number;
  surfaceTension: number;
}

/** Densities and surface tensions, from memory of Lancaster, *The Physics of Welding*. */
export const METALS: Readonly<Record<Material, MetalProperties>> = {
  'carbon-steel': { solidDensity: 7860, liquidDensity: 7000, surfaceTension: 1.2 },
  'stainless-steel': { solidDensity: 7900, liquidDensity: 6900, surfaceTension: 1.15 },
  aluminium: { solidDensity: 2700, liquidDensity: 2400, surfaceTension: 0.9 },
};

/** Line `intercept + slope·d(mm)` through the published minimum spray currents (MIG handbook, table 1-2). */
const SPRAY_LINE: Readonly<Record<Material, readonly [number, number]>> = {
  'carbon-steel': [33, 156],
  'stainless-steel': [24, 164],
  aluminium: [15, 105],
};

/**
 * Globular-spray transition in A for the gas the published table names (98Ar/2O2, 99Ar/1O2, Ar).
 * Carbon dioxide raises it by about 1 % a percent; from 25 % on there is none (Infinity).
 */
export function transitionCurrentA(material: Material, diameterMm: number, gas: GasSpec): number {
  const [intercept, slope] = SPRAY_LINE[material];
  if (gas.co2Percent >= 25) return Number.POSITIVE_INFINITY;
  return (intercept + slope * diameterMm) * (1 + 0.01 * gas.co2Percent);
}

/** The same for the wire alone, in the gas that the published table names. */
export function nominalTransitionA({ material, diameterMm }: WireSpec): number {
  const [intercept, slope] = SPRAY_LINE[material];
  return intercept + slope * diameterMm;
}

/**
 * Melting coefficients `[alpha, beta]` in mm/(s·A) and 1/(s·A²), scaled from 1.2 mm steel (from memory
 * of Allum & Quintino 1985) and 1.6 mm aluminium (from memory of the AWS handbook,
 * worked over by hand from pounds an hour). Below 0.8 mm the resistive part is lessened, since d⁻⁴ over-predicts
 * there; by how much, and the 1.35 of stainless steel, is own choice.
 */
export function meltingCoefficients(material: Material, diameterMm: number): [number, number] {
  const [alpha, beta, referenceMm] =
    material === 'aluminium' ? [0.279, 8.5e-6, 1.6] : [0.3, 5e-5, 1.2];
  const resistive = material === 'stainless-steel' ? 1.35 : 1;
  const scale = referenceMm / diameterMm;
  const thin = Math.max(0, 0.8 - diameterMm);
  return [alpha * scale ** 2, resistive * beta * scale ** 4 * (1 - thin)];
}

/** Resistance of the hot extension in ohm per mm; resistivities when hot in Ω·mm, common practice, no source. */
export function wireOhmPerMm(material: Material, diameterMm: number): number {
  const resistivity = material === 'aluminium' ? 6e-5 : 5e-4;
  return resistivity / (Math.PI * (diameterMm / 2) ** 2);
}
