import type { ForeignMode, ForeignSetup } from '../world.js';
import type { Dice } from './dice.js';
import {
  GLOBULAR_WINDOWS,
  PULSED_WINDOWS,
  SHORT_WINDOWS,
  SPRAY_WINDOWS,
  type Window,
} from './windows.js';

/** What a welder has set and what the arc makes of it on average. */
export interface Draft {
  mode: ForeignMode;
  setup: ForeignSetup;
  meanV: number;
  meanA: number;
  /** Volume of wire melted, mm³/s. */
  meltMm3PerS: number;
  /** False where the settings stand a little outside the window of the mode. */
  inside: boolean;
}

const WINDOWS: Record<ForeignMode, readonly Window[]> = {
  'short-circuit': SHORT_WINDOWS,
  globular: GLOBULAR_WINDOWS,
  spray: SPRAY_WINDOWS,
  'pulsed-spray': PULSED_WINDOWS,
};

/** Modes in the order in which seeds draw them. */
export const MODES: readonly ForeignMode[] = ['short-circuit', 'globular', 'spray', 'pulsed-spray'];

function pickRow(dice: Dice, rows: readonly Window[]): Window {
  let left = dice.next() * rows.reduce((sum, r) => sum + r.weight, 0);
  for (const r of rows) {
    left -= r.weight;
    if (left < 0) return r;
  }
  return rows[0] as Window;
}

/**
 * Melted volume in mm³/s. Steel: a straight line through the burn-off figures of Allum and Quintino
 * and their
 * scaling to thin wire (0.33 mm³/(s·A) plus heat from the extension, own fit). Aluminium: 0.56
 * mm³/(s·A), from
 * the 0.012 lb/(h·A) of the AWS handbook (from memory).
 */
function meltRate(material: string, wireMm: number, currentA: number, stickOutMm: number): number {
  if (material === 'aluminium') return 0.56 * currentA;
  return currentA * (0.33 + (0.0012 * currentA * stickOutMm) / 15 / (wireMm * wireMm));
}

/** Draws wire, gas, current and voltage for a mode; 8 in 10 inside the windows. */
export function drawDraft(dice: Dice, mode: ForeignMode): Draft {
  const window = pickRow(dice, WINDOWS[mode]);
  const gas = dice.pick(window.gases);
  const [lowA, highA] = window.currentA;
  const [lowV, highV] = window.voltageV;
  const height = dice.between(0.05, 0.95);
  let meanA = lowA + (highA - lowA) * height;
  // CO2 wants 1 to 3 V more than a mixture at equal current in dip transfer (from memory of shop
  // rules).
  const lift = mode === 'short-circuit' && gas === 'CO2' ? 0.2 : 0;
  const place = 0.45 + lift + 0.5 * (height - 0.5) + 0.17 * dice.bell();
  let meanV = lowV + (highV - lowV) * Math.min(0.96, Math.max(0.04, place));

  const inside = dice.chance(0.8);
  if (!inside) {
    const how = dice.next();
    if (how < 0.3) meanV = lowV - dice.between(0.4, 2);
    else if (how < 0.6) meanV = highV + dice.between(0.4, 2.5);
    else if (how < 0.8 && mode !== 'spray') meanA = lowA * dice.between(0.75, 0.96);
    else meanA = highA * dice.between(1.04, 1.22);
  }

  const dip = mode === 'short-circuit';
  const stickOutMm = dip ? dice.between(7, 15) : dice.between(11, 22);
  const section = (Math.PI / 4) * window.wireMm ** 2;
  const melt = meltRate(window.material, window.wireMm, meanA, stickOutMm) * dice.around(1, 0.06);
  // Set minus measured: 0 to 3 V per 100 A of slope and cable, or nothing where the source
  // regulates at its ends.
  const loss = dice.chance(0.25)
    ? dice.between(-0.3, 0.5)
    : meanA * dice.between(0.008, 0.026) + 0.5;
  return {
    mode,
    meanV,
    meanA,
    meltMm3PerS: melt,
    inside,
    setup: {
      material: window.material,
      wireDiameterMm: window.wireMm,
      gas,
      setVoltageV: Math.round((meanV + loss) * 10) / 10,
      wireFeedMPerMin: Math.round((melt / section) * 0.06 * 100) / 100,
      stickOutMm: Math.round(stickOutMm),
    },
  };
}
