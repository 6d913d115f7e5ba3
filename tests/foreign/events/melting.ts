import type { ForeignSetup } from '../world.js';

/** Cross-section of the wire, mm². */
export function wireAreaMm2(wireMm: number): number {
  return (Math.PI / 4) * wireMm * wireMm;
}

/**
 * Feed in mm/s that melts off at mean current and mean squared current.
 * Form alpha·I + beta·L·I² (Lesnewich). Steel: 0.30 and 5.0e-5 at 1.2 mm (domain sheet 4.1, from
 * memory of
 * Allum and Quintino), scaled by d^-2 and d^-4; below 1.2 mm
 * by d^-3, which keeps to the shop row of 9.7-12.7 m/min at 190-250 A for 0.9 mm (domain sheet
 * 3.3). Aluminium: from the handbook a and b of the same section, set
 * at 1.6 mm. Stainless: 1.3 times the resistance term (own choice).
 */
export function meltingFeedMmPerS(
  setup: Pick<ForeignSetup, 'material' | 'wireDiameterMm' | 'stickOutMm'>,
  meanA: number,
  meanSquareA2: number,
): number {
  const light = setup.material === 'aluminium';
  const s = (light ? 1.6 : 1.2) / setup.wireDiameterMm;
  const alpha = (light ? 0.279 : 0.3) * s ** 2;
  const beta =
    (light ? 8.5e-6 : 5.0e-5) *
    s ** (s > 1 && !light ? 3 : 4) *
    (setup.material === 'stainless' ? 1.3 : 1);
  return alpha * meanA + beta * setup.stickOutMm * meanSquareA2;
}

/**
 * Solid over liquid density: steel 7860/7000 (domain sheet 4.3), aluminium 2700/2380 (from memory
 * of tables).
 */
export function swelling(material: ForeignSetup['material']): number {
  return material === 'aluminium' ? 2700 / 2380 : 7860 / 7000;
}

/** Volume of a ball, mm³. */
export function ballMm3(diameterMm: number): number {
  return (Math.PI / 6) * diameterMm ** 3;
}

/** Diameter of a ball of that volume, mm. */
export function ballDiameterMm(volumeMm3: number): number {
  return Math.cbrt((6 / Math.PI) * volumeMm3);
}
