import type { ForeignMode } from '../world.js';
import type { Combo, Gear, Habit } from './gear.js';
import type { Dice } from './random.js';

/** How the metal of a wire melts and holds together. */
export interface Metal {
  /**
   * Melted wire by arc heat, mm3 a second and ampere; by heat of its own resistance, mm4/(s A2).
   */
  meltByArc: number;
  meltByOhm: number;
  swell: number;
  ohmPerMm: number;
  /** Density and surface tension of the liquid, kg/mm3 and kg/s2 (the same as N/m). */
  density: number;
  tension: number;
}

// Steel: the two melting constants of 1.2 mm wire (Allum & Quintino 1985, from memory) freed of its
// section;
// 7000 kg/m3 and 1.2 N/m from memory. Stainless: more own heat, own choice. Aluminium: between the
// handbook
// constant (from memory) and shop feeds, own choice; 2400 kg/m3 and 0.86 N/m from memory.
const METALS: Record<Combo['material'], Metal> = {
  steel: {
    meltByArc: 0.339,
    meltByOhm: 6.4e-5,
    swell: 1.12,
    ohmPerMm: 3.0e-4,
    density: 7e-6,
    tension: 1.2,
  },
  stainless: {
    meltByArc: 0.34,
    meltByOhm: 8.5e-5,
    swell: 1.12,
    ohmPerMm: 4.0e-4,
    density: 6.9e-6,
    tension: 1.2,
  },
  aluminium: {
    meltByArc: 0.72,
    meltByOhm: 2e-5,
    swell: 1.13,
    ohmPerMm: 4e-5,
    density: 2.4e-6,
    tension: 0.86,
  },
};

/** What the welder sets, and what he means to get by it. */
export interface Plan {
  combo: Combo;
  metal: Metal;
  habit: Habit;
  meanA: number;
  meanV: number;
  setV: number;
  feedMmPerS: number;
  stickOutMm: number;
  /** Fall at the ends of the arc and gradient of its column. */
  fallV: number;
  gradientVPerMm: number;
  pulse: { hz: number; peakA: number; peakS: number; baseA: number } | null;
}

type Window = [lowA: number, highA: number, lowV: number, highV: number];

/** Amperes and volts of a mode for a wire and gas; volts are means at the torch. */
function windowOf(mode: ForeignMode, c: Combo): Window {
  const d = c.wireMm;
  const spray = c.sprayFromA ?? 0;
  if (mode === 'short-circuit') {
    // Published table: 0.76 mm 70-130 A 15-21 V, 0.89 mm 80-190 A 16-22 V, 1.14 mm 100-225 A 17-22
    // V, taken
    // to its middle; CO2 1 to 3 V more (from memory).
    const more = c.co2 > 22 ? 2 : 0;
    return [20 + 75 * d, 15 + 150 * d, 13 + 3 * d + more, 14.6 + 3.6 * d + more];
  }
  if (mode === 'globular') {
    if (c.material === 'aluminium') return [0.55 * spray, 0.85 * spray, 20, 23.5]; // own choice
    // 200-300 A, memory
    if (c.sprayFromA === null) return [170 * d, 240 * d, 23 + 1.5 * (d - 1), 29];
    return [0.62 * spray, 0.86 * spray, 22.5, 27]; // 1.0 mm 180-230 A 22-26 V published chart
  }
  if (mode === 'spray') {
    if (c.material === 'aluminium') return [1.15 * spray, 1.6 * spray, 21.5, 27]; // published table
    return [1.12 * spray, 1.42 * spray, 25 + 1.5 * (d - 0.8), 29]; // published tables 24-30 V
  }
  if (c.material === 'aluminium') return [60 * d, 130 * d, 18.5, 22.5]; // own choice
  return [75 * d, 170 * d, 20, 25]; // common practice, no source
}

export function drawPlan(gear: Gear, combo: Combo, mode: ForeignMode, dice: Dice): Plan {
  const metal = METALS[combo.material];
  const habit = dice.pick(gear.habits);
  const [lowA, highA, lowV, highV] = windowOf(mode, combo);
  const meanA = dice.window(lowA, highA);
  // Hotter settings go with more current: volts move along the window together with amperes.
  const along = Math.min(1.2, Math.max(-0.2, (meanA - lowA) / (highA - lowA)));
  const spread = 0.3 * (highV - lowV);
  const meanV =
    dice.window(lowV + spread * 2.2 * along, lowV + spread * (1.1 + 2.2 * along)) + habit.voltsBias;
  const argon = combo.co2 > 22 ? 0 : 1;
  const section = (Math.PI / 4) * combo.wireMm ** 2;
  // Ends 14-17 V, column 0.6-0.9 V/mm in argon and 1.2-2 V/mm in CO2: from memory, unsure.
  const ends = combo.material === 'aluminium' ? 15.2 : 16.2 + 2.2 * (1 - argon);
  const fallV = ends + dice.between(-0.4, 0.4);
  const gradientVPerMm = (argon ? 0.7 + 0.012 * combo.co2 : 1.9) * dice.spread(0.08);
  const gapMm = Math.max(1.5, Math.min(9, (meanV - fallV - 0.016 * meanA) / gradientVPerMm + 0.5));
  // Long arcs are held from further away, so that some free wire is left; own choice.
  const wanted = Math.max(8, habit.stickOutMm + dice.between(-2, 2));
  const stickOutMm = Math.max(wanted, gapMm + dice.between(7, 10));
  let square = meanA * meanA;
  let pulse: Plan['pulse'] = null;
  if (mode === 'pulsed-spray') {
    const spray = combo.sprayFromA ?? 200;
    const peakA = spray * dice.between(1.6, 2.1); // common practice 350-480 A for 1.2 mm steel
    const baseA = Math.min(0.55 * meanA, dice.between(30, 55) * combo.wireMm);
    // I2t law, memory
    const peakS = (0.0065 * spray * spray * dice.between(0.85, 1.25)) / (peakA * peakA);
    const hz = (meanA - baseA) / ((peakA - baseA) * (peakS + peakA / gear.machine.rampAPerS / 2));
    pulse = { hz, peakA, peakS, baseA };
    square = baseA ** 2 + hz * peakS * (peakA ** 2 - baseA ** 2);
  } else if (mode === 'short-circuit') square *= 1.12; // own choice: current swings in dip
  const melted =
    metal.meltByArc * meanA + (metal.meltByOhm * (stickOutMm - gapMm) * square) / section;
  return {
    combo,
    metal,
    habit,
    meanA,
    meanV,
    setV: meanV + (gear.machine.slopeOhm + gear.machine.cableOhm) * meanA,
    feedMmPerS: melted / section,
    stickOutMm,
    fallV,
    gradientVPerMm,
    pulse,
  };
}
