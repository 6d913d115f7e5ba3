/** Wires and gases with the currents and voltages at which each mode is welded. */
export interface Window {
  material: 'steel' | 'stainless' | 'aluminium';
  wireMm: number;
  gases: readonly string[];
  /** Mean current in A, low and high. */
  currentA: readonly [number, number];
  /** Mean voltage in V, low and high. */
  voltageV: readonly [number, number];
  /** How often this row is drawn, against the others of its mode. */
  weight: number;
}

const MIXED = ['Ar+18CO2', 'Ar+20CO2', 'Ar+25CO2', 'Ar+15CO2', 'Ar+8CO2'] as const;

function row(
  material: Window['material'],
  wireMm: number,
  gases: readonly string[],
  currentA: readonly [number, number],
  voltageV: readonly [number, number],
  weight = 1,
): Window {
  return { material, wireMm, gases, currentA, voltageV, weight };
}

/**
 * Short-circuit windows. Steel 0.8, 0.9 and 1.2 mm: a manufacturer's data sheet (Table 6-1), CO2 or
 * Ar-CO2;
 * 1.0 mm lies between them. Stainless: Modern Welding 2020, Fig. 8-16. Aluminium: own choice.
 */
export const SHORT_WINDOWS: readonly Window[] = [
  row('steel', 0.8, ['CO2', ...MIXED], [70, 130], [15, 21], 2),
  row('steel', 0.9, ['CO2', ...MIXED], [80, 190], [16, 22], 2),
  row('steel', 1.0, ['CO2', ...MIXED], [90, 205], [16.5, 22], 3),
  row('steel', 1.2, ['CO2', ...MIXED], [100, 225], [17, 22], 3),
  row('stainless', 0.8, ['He+7.5Ar+2.5CO2', 'Ar+2CO2'], [50, 145], [17, 22]),
  row('stainless', 0.9, ['He+7.5Ar+2.5CO2', 'Ar+2CO2'], [65, 175], [17, 22]),
  row('stainless', 1.2, ['He+7.5Ar+2.5CO2', 'Ar+2CO2'], [100, 210], [17, 22], 0.5),
  row('aluminium', 1.0, ['Ar'], [60, 110], [15, 19], 0.5),
  row('aluminium', 1.2, ['Ar'], [75, 130], [15, 19], 0.5),
];

/**
 * Globular windows. CO2 1.2 mm: 200-300 A, 26-32 V (from memory of shop tables); M21 1.2 mm:
 * 180-250 A,
 * 22-27 V (common practice, no source); 1.0 mm Ar-rich: 180-230 A, 22-26 V (a gas supplier's
 * chart); 0.9 mm
 * Ar+25CO2: 180-220 A (secondary note). The other wires are own choice: moved with the wire's
 * section, and
 * for Ar-rich gas under the currents at which spray begins.
 */
export const GLOBULAR_WINDOWS: readonly Window[] = [
  row('steel', 0.9, ['CO2'], [140, 220], [23, 29]),
  row('steel', 1.0, ['CO2'], [160, 240], [24, 30], 2),
  row('steel', 1.2, ['CO2'], [200, 300], [26, 32], 4),
  row('steel', 1.6, ['CO2'], [260, 380], [27, 34]),
  row('steel', 0.9, ['Ar+25CO2'], [180, 220], [22, 26]),
  row('steel', 1.0, ['Ar+8CO2', 'Ar+12CO2', 'Ar+18CO2'], [180, 230], [22, 26], 2),
  row('steel', 1.2, ['Ar+18CO2', 'Ar+20CO2', 'Ar+25CO2'], [180, 250], [22, 27], 4),
  row('steel', 1.2, ['Ar+2O2', 'Ar+5CO2'], [150, 215], [23, 27]),
  row('steel', 1.6, ['Ar+2O2', 'Ar+18CO2'], [180, 265], [24, 29]),
  row('stainless', 1.2, ['Ar+2O2', 'Ar+2CO2'], [140, 215], [22, 26]),
  row('aluminium', 1.2, ['Ar'], [85, 130], [20, 24], 0.5),
  row('aluminium', 1.6, ['Ar'], [110, 172], [21, 25], 0.5),
];

/**
 * Spray windows. Steel Ar-rich and Ar+10CO2: a manufacturer's Table 6-2 and a secondary note; 18 %
 * CO2 only at
 * high current (sold as able to spray, measured at 330-350 A). Stainless and aluminium: Modern
 * Welding
 * Figs. 8-17 and 8-18. 1.0 mm lies between its neighbours.
 */
export const SPRAY_WINDOWS: readonly Window[] = [
  row('steel', 0.8, ['Ar+2O2', 'Ar+5CO2', 'Ar+8CO2'], [165, 265], [24, 28]),
  row('steel', 0.9, ['Ar+2O2', 'Ar+5CO2', 'Ar+8CO2', 'Ar+10CO2'], [190, 250], [24, 28], 2),
  row('steel', 1.0, ['Ar+2O2', 'Ar+8CO2', 'Ar+10CO2'], [220, 290], [25, 29], 2),
  row('steel', 1.2, ['Ar+2O2', 'Ar+5CO2', 'Ar+8CO2', 'Ar+10CO2'], [250, 315], [26, 29.5], 4),
  row('steel', 1.2, ['Ar+15CO2', 'Ar+18CO2'], [285, 340], [27, 31], 2),
  row('steel', 1.6, ['Ar+2O2', 'Ar+8CO2', 'Ar+10CO2'], [350, 450], [29, 32]),
  row('stainless', 0.9, ['Ar+2O2', 'Ar+1O2'], [180, 255], [24, 29]),
  row('stainless', 1.2, ['Ar+2O2', 'Ar+2CO2'], [230, 300], [24, 30]),
  row('stainless', 1.6, ['Ar+2O2'], [285, 325], [24, 32], 0.5),
  row('aluminium', 0.8, ['Ar'], [100, 150], [19, 22], 0.5),
  row('aluminium', 1.2, ['Ar', 'Ar+30He'], [140, 200], [22, 28], 1.5),
  row('aluminium', 1.6, ['Ar', 'Ar+30He'], [185, 300], [24, 30]),
];

/**
 * Pulsed windows, mean current and mean voltage: own choice, from a third of the current at which
 * spray begins
 * to a little over it (the purpose of pulsing); no published window was at hand.
 */
export const PULSED_WINDOWS: readonly Window[] = [
  row('steel', 0.9, ['Ar+2O2', 'Ar+8CO2', 'Ar+18CO2'], [60, 160], [19, 26]),
  row('steel', 1.0, ['Ar+5CO2', 'Ar+8CO2', 'Ar+15CO2', 'Ar+18CO2'], [70, 190], [20, 27], 3),
  row('steel', 1.2, ['Ar+2O2', 'Ar+8CO2', 'Ar+15CO2', 'Ar+18CO2'], [90, 240], [20, 28], 4),
  row('steel', 1.6, ['Ar+8CO2', 'Ar+18CO2'], [140, 300], [22, 30], 0.7),
  row('stainless', 1.0, ['Ar+2CO2', 'Ar+2O2'], [70, 180], [19, 26], 1.5),
  row('stainless', 1.2, ['Ar+2CO2', 'Ar+2O2'], [90, 220], [20, 27], 1.5),
  row('aluminium', 1.2, ['Ar', 'Ar+30He'], [60, 160], [18, 24], 2),
  row('aluminium', 1.6, ['Ar', 'Ar+30He'], [90, 220], [19, 26]),
];
