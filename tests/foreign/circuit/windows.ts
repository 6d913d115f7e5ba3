/** Published windows of current and voltage per mode, wire and gas, from which arcs are set up. */
import type { ForeignMode } from '../world.js';
import { type Gas, type Material, transitionCurrent } from './metals.js';

/** Amperes and volts, low and high. */
export interface Window {
  a: readonly [number, number];
  v: readonly [number, number];
}

type Rows = Record<string, Window>;

// Manufacturer's data sheet (0.030, 0.035, 0.045 in); 1.0 mm lies between (own choice). The low end of
// 0.8 mm follows shop tables (50 to 70 A at 13 to 16 V).
const dipSteel: Rows = {
  '0.8': { a: [60, 130], v: [14.5, 21] },
  '0.9': { a: [80, 190], v: [16, 22] },
  '1': { a: [90, 200], v: [16, 22] },
  '1.2': { a: [100, 225], v: [17, 22] },
};
// Welding textbook, helium-argon-CO2 rows; 1.0 mm between (own choice).
const dipStainless: Rows = {
  '0.8': { a: [50, 145], v: [17, 22] },
  '0.9': { a: [65, 175], v: [17, 22] },
  '1': { a: [80, 190], v: [17, 22] },
  '1.2': { a: [100, 210], v: [17, 22] },
};
// Common practice, no source.
const dipAluminium: Rows = {
  '0.8': { a: [50, 95], v: [15, 19] },
  '1': { a: [60, 110], v: [15, 19.5] },
  '1.2': { a: [70, 125], v: [15.5, 20] },
};
// CO2 1.2 mm from memory (200-300 A, 26-32 V); other wires scaled (own choice).
const globularCo2: Rows = {
  '0.9': { a: [140, 210], v: [24, 29] },
  '1': { a: [160, 240], v: [24.5, 30] },
  '1.2': { a: [200, 300], v: [26, 32] },
  '1.6': { a: [270, 390], v: [27, 34] },
};
// 1.0 mm: gas supplier's chart (180-230 A, 22-26 V); 1.2 mm common practice (180-250 A, 22-27 V); rest scaled.
const globularMix: Rows = {
  '0.9': { a: [150, 210], v: [22, 26] },
  '1': { a: [170, 230], v: [22, 26] },
  '1.2': { a: [170, 250], v: [22, 27] },
  '1.6': { a: [200, 320], v: [23, 29] },
};
// Manufacturer's table for argon-rich gas (1/16 in: upper end from the 90/10 row); 1.0 mm between.
const spraySteel: Rows = {
  '0.8': { a: [150, 265], v: [24, 28] },
  '0.9': { a: [175, 290], v: [24, 28] },
  '1': { a: [185, 300], v: [24, 29] },
  '1.2': { a: [200, 315], v: [24, 30] },
  '1.6': { a: [275, 450], v: [26, 32] },
};
// Welding textbook, argon with 1 to 5 % O2.
const sprayStainless: Rows = {
  '0.8': { a: [160, 210], v: [24, 28] },
  '0.9': { a: [180, 255], v: [24, 29] },
  '1': { a: [190, 275], v: [24, 29.5] },
  '1.2': { a: [200, 300], v: [24, 30] },
  '1.6': { a: [215, 325], v: [24, 32] },
};
// Welding textbook, argon; 1.0 mm between.
const sprayAluminium: Rows = {
  '0.8': { a: [100, 150], v: [19, 22] },
  '1': { a: [115, 175], v: [20.5, 25] },
  '1.2': { a: [130, 200], v: [22, 28] },
  '1.6': { a: [160, 300], v: [24, 30] },
};

/** The window of a mode; pulsed arcs have no published row of mean values (common practice, no source). */
export function windowFor(mode: ForeignMode, m: Material, wireMm: number, g: Gas): Window {
  const key = String(wireMm);
  const it = transitionCurrent(m, wireMm, g);
  if (mode === 'pulsed-spray') return { a: [0.3 * it, 1.0 * it], v: [17, 30] };
  if (mode === 'globular') {
    if (g.co2 >= 40) return globularCo2[key] ?? (globularCo2['1.2'] as Window);
    // Argon-rich gas and metals without a row: below the transition, with a long arc (own choice).
    if (m !== 'steel' || g.co2 < 10) {
      return { a: [0.5 * it, 0.88 * it], v: m === 'aluminium' ? [18.5, 24] : [21, 26] };
    }
    const row = globularMix[key] ?? (globularMix['1.2'] as Window);
    return { a: row.a, v: row.v };
  }
  const rows =
    mode === 'short-circuit'
      ? { steel: dipSteel, stainless: dipStainless, aluminium: dipAluminium }[m]
      : { steel: spraySteel, stainless: sprayStainless, aluminium: sprayAluminium }[m];
  return rows[key] ?? (rows['1.2'] as Window);
}
