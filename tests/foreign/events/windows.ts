import type { ForeignMode, ForeignSetup } from '../world.js';

/**
 * A row of a published table: wire in mm, lowest and highest current in A, lowest and highest
 * voltage in V.
 */
type Row = readonly [number, number, number, number, number];

/** Lowest and highest current (A) and voltage (V) of a mode. */
export interface Window {
  currentA: readonly [number, number];
  voltageV: readonly [number, number];
}

// domain sheet 3.1, manufacturer's Table 6-1; 1.6 mm is own choice (dip with thick wire has no row
// there)
const dipSteel: readonly Row[] = [
  [0.76, 70, 130, 15, 21],
  [0.89, 80, 190, 16, 22],
  [1.14, 100, 225, 17, 22],
  [1.6, 140, 260, 18, 23],
];
// domain sheet 3.1, Modern Welding Fig. 8-16; 1.6 mm own choice
const dipStainless: readonly Row[] = [
  [0.8, 50, 145, 17, 22],
  [0.9, 65, 175, 17, 22],
  [1.2, 100, 210, 17, 22],
  [1.6, 130, 240, 17, 22],
];
// own choice: no row in the domain sheet for aluminium dip
const dipAluminium: readonly Row[] = [
  [0.8, 45, 90, 14, 19],
  [1.2, 70, 125, 15, 20],
  [1.6, 90, 160, 16, 21],
];
// domain sheet 3.3, Table 6-2 and (1.32, 1.59 mm) the 90/10 note, its lower end eased to the 98/2
// transition
const spraySteel: readonly Row[] = [
  [0.76, 150, 265, 24, 28],
  [0.89, 175, 290, 24, 28],
  [1.14, 200, 315, 24, 30],
  [1.32, 250, 380, 26, 31],
  [1.59, 275, 450, 28, 32],
];
// domain sheet 3.3, Modern Welding Fig. 8-17
const sprayStainless: readonly Row[] = [
  [0.76, 160, 210, 24, 28],
  [0.89, 180, 255, 24, 29],
  [1.14, 200, 300, 24, 30],
  [1.59, 215, 325, 24, 32],
];
// domain sheet 3.3, Modern Welding Fig. 8-18
const sprayAluminium: readonly Row[] = [
  [0.76, 100, 150, 19, 22],
  [1.19, 130, 200, 22, 28],
  [1.59, 160, 300, 24, 30],
];
// domain sheet 3.2: 1.2 mm CO2 200-300 A, 26-32 V; other wires scaled by d^1.1 (own choice)
const globularCo2: readonly Row[] = [
  [0.8, 128, 192, 23, 29],
  [1.2, 200, 300, 25, 32],
  [1.6, 274, 412, 27, 34],
];
// domain sheet 2.1: transition currents for 98/2 steel, 99/1 stainless, argon aluminium
const transitionA: Record<ForeignSetup['material'], readonly (readonly [number, number])[]> = {
  steel: [
    [0.76, 150],
    [0.89, 165],
    [1.14, 220],
    [1.32, 240],
    [1.59, 275],
  ],
  stainless: [
    [0.89, 170],
    [1.14, 225],
    [1.59, 285],
  ],
  aluminium: [
    [0.76, 95],
    [1.17, 135],
    [1.57, 180],
  ],
};

/** Reads column `col` of a table at wire `x`, straight lines between rows and beyond the ends. */
function at(rows: readonly (readonly number[])[], x: number, col: number): number {
  let k = 0;
  while (k < rows.length - 2 && x > (rows[k + 1]?.[0] ?? 0)) k++;
  const [lo, hi] = [rows[k] as readonly number[], rows[k + 1] as readonly number[]];
  const f = (x - (lo[0] as number)) / ((hi[0] as number) - (lo[0] as number));
  return (lo[col] as number) * (1 - f) + (hi[col] as number) * f;
}

/** Carbon dioxide in the gas, volume per cent, read from its shop name. */
export function co2Percent(gas: string): number {
  if (gas === 'CO2') return 100;
  const found = /\+(\d+(?:\.\d+)?)CO2/.exec(gas);
  return found ? Number(found[1]) : 0;
}

/**
 * Current above which spray begins, A: table, and 1 % more for each per cent of CO2 (domain sheet
 * 2.2).
 */
export function sprayTransitionA(
  material: ForeignSetup['material'],
  wireMm: number,
  gas: string,
): number {
  return at(transitionA[material], wireMm, 1) * (1 + 0.01 * Math.min(co2Percent(gas), 25));
}

/**
 * The published window of a mode for wire, material and gas; pulsed spray has none and gets own
 * choices.
 */
export function windowOf(
  mode: ForeignMode,
  material: ForeignSetup['material'],
  wireMm: number,
  gas: string,
): Window {
  const of = (rows: readonly Row[]): Window => ({
    currentA: [at(rows, wireMm, 1), at(rows, wireMm, 2)],
    voltageV: [at(rows, wireMm, 3), at(rows, wireMm, 4)],
  });
  const transition = sprayTransitionA(material, wireMm, gas);
  const light = material === 'aluminium';
  if (mode === 'short-circuit') {
    return of(light ? dipAluminium : material === 'steel' ? dipSteel : dipStainless);
  }
  if (mode === 'spray') {
    const w = of(light ? sprayAluminium : material === 'steel' ? spraySteel : sprayStainless);
    const low = Math.max(w.currentA[0], 1.04 * transition);
    return { currentA: [low, Math.max(w.currentA[1], 1.1 * low)], voltageV: w.voltageV };
  }
  if (mode === 'globular') {
    if (co2Percent(gas) >= 30) return of(globularCo2);
    // domain sheet 3.2: 1.0 mm 180-230 A and 22-26 V, 1.2 mm M21 180-250 A and 22-27 V, below the
    // transition
    return {
      currentA: [0.72 * transition, 0.97 * transition],
      voltageV: light ? [19, 24] : [22, 25 + 1.6 * (wireMm - 0.8)],
    };
  }
  // own choice: mean current of pulsed arcs against the transition current; mean volts as seen in
  // the trade
  return {
    currentA: [0.36 * transition, 0.95 * transition],
    voltageV: light ? [17, 24] : [19, 28],
  };
}
