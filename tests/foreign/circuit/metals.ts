/** Wire metals and shielding gases: constants, melting, transition current. */
import type { ForeignSetup } from '../world.js';

export type Material = ForeignSetup['material'];

/** What the simulator needs to know of a wire metal. */
export interface Metal {
  /** Density of the liquid, kg/m3. */
  liquidDensity: number;
  /** Solid over liquid density: how much the metal swells on melting. */
  swell: number;
  /** Surface tension in N/m, lower and upper end. */
  surfaceTension: readonly [number, number];
  /** Melting by the arc for a 1.2 mm wire, mm/(s A). */
  arcMelt12: number;
  /** Melting by resistance heat for a 1.2 mm wire, 1/(s A2). */
  ohmMelt12: number;
  /** Resistance of hot 1.2 mm wire, ohm a metre. */
  wireOhm12: number;
}

export const metals: Record<Material, Metal> = {
  steel: {
    liquidDensity: 7000, // from memory of common handbooks (6800 to 7200)
    swell: 1.12, // 7860 / 7000
    surfaceTension: [1.1, 1.45], // from memory: 1.2 with O and S, 1.8 for clean iron
    arcMelt12: 0.29, // from memory of Allum and Quintino 1985: 0.30
    ohmMelt12: 5.1e-5, // from memory of the same: 5.0e-5
    wireOhm12: 0.3, // own choice within 0.15 to 0.6 for hot wire
  },
  stainless: {
    liquidDensity: 6900, // from memory
    swell: 1.14, // from memory
    surfaceTension: [1.15, 1.6], // own choice near steel
    arcMelt12: 0.29, // own choice: as steel
    ohmMelt12: 6.6e-5, // own choice: more resistance than steel
    wireOhm12: 0.45, // own choice: austenitic resistivity
  },
  aluminium: {
    liquidDensity: 2380, // from memory
    swell: 1.13, // from memory
    surfaceTension: [0.8, 0.95], // from memory: about 0.87
    arcMelt12: 0.78, // from memory of feed charts: 180 A near 9 m/min for 1.2 mm
    ohmMelt12: 4e-6, // own choice: conducts ten times better than steel
    wireOhm12: 0.04, // own choice
  },
};

/** Melting speed constants for a wire of d mm: arc part ~ 1/d2, resistance part ~ 1/d4 (plain geometry). */
export function meltConstants(metal: Metal, d: number): { arc: number; ohm: number } {
  const s = (1.2 / d) ** 2;
  return { arc: metal.arcMelt12 * s, ohm: metal.ohmMelt12 * s * s };
}

/** A shielding gas: the name a shop writes and its active parts in per cent. */
export interface Gas {
  name: string;
  co2: number;
  o2: number;
}

/** Makes a gas from its active parts. */
export function gas(co2: number, o2 = 0): Gas {
  if (co2 >= 100) return { name: 'CO2', co2: 100, o2: 0 };
  const name = `Ar${co2 > 0 ? `+${co2}CO2` : ''}${o2 > 0 ? `+${o2}O2` : ''}`;
  return { name, co2, o2 };
}

/**
 * Current above which drops get as small as the wire, A. Lines through published tables (98Ar/2O2 steel,
 * 99Ar/1O2 stainless, argon for aluminium), 1 % more a per cent of CO2, and a steeper rise above 15 %.
 */
export function transitionCurrent(material: Material, d: number, g: Gas): number {
  const base =
    material === 'aluminium'
      ? 15 + 105 * d
      : material === 'stainless'
        ? 26 + 164 * d
        : 33 + 156 * d;
  // Above 15 % CO2 the sources part (255 A to 330 A for 1.2 mm at 20 %); 2.5 % a per cent is between.
  return base * (1 + 0.01 * Math.min(g.co2, 15) + 0.025 * Math.max(0, Math.min(g.co2, 25) - 15));
}

/** How strongly the gas pushes the drop back: 0 at 15 % CO2 and less, 1 from 45 % (published: above 30 % it rules). */
export function repulsion(g: Gas): number {
  return Math.max(0, Math.min(1, (g.co2 - 15) / 30));
}

/** Mean constants of the arc: falls in V, resistance in ohm, field in V/m. */
export function arcConstants(
  material: Material,
  g: Gas,
): { fallV: number; ohm: number; fieldVPerM: number } {
  const x = (g.co2 / 100) ** 0.7; // own choice: a little CO2 already does much
  return {
    fallV: (material === 'aluminium' ? 14.4 : 15.9) + 1.2 * x, // from memory: 14 to 17 V
    ohm: 0.0225, // from memory of Moore and Naidu: 0.024
    fieldVPerM: (material === 'aluminium' ? 620 : 670) + 950 * x, // from memory: 0.6-0.9 and 1.2-2 V/mm
  };
}
