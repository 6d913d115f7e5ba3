import type { Mode, Random } from '../../../core/index.js';
import type { ArcSpec, GasSpec, ProbeSpec, WireSpec } from '../scenario.js';
import type { OperatingPoint } from './draw-source.js';
import { speaksFor, WORKING_WINDOWS } from './windows.js';

/** Mean current and voltage that a welder sets for, as the meter at the feeder would show them. */
export interface Aim {
  currentA: number;
  meanV: number;
}

/**
 * A point inside one of the published windows for this mode, wire and gas; null where there is none. More current
 * mostly goes with more voltage, as in every setting table, but for more than half of the width of the window it need not.
 */
export function drawAim(random: Random, mode: Mode, wire: WireSpec, gas: GasSpec): Aim | null {
  const rows = WORKING_WINDOWS.filter((row) => speaksFor(row, mode, wire, gas));
  if (rows.length === 0) return null;
  const { currentA, voltageV } = random.pick(rows);
  const along = random.next();
  const up = 0.4 * along + 0.6 * random.next();
  return {
    currentA: currentA[0] + along * (currentA[1] - currentA[0]),
    meanV: voltageV[0] + up * (voltageV[1] - voltageV[0]),
  };
}

/** How often arc length, fall and resistance are drawn together before the point counts as out of reach. */
const TRIES = 40;

/**
 * Arc length, fall voltage, resistance and field drawn together so that they add up to the voltage of the point;
 * null when none in {@link TRIES} does with a fall voltage inside `fallRangeV`. `draw` gives the other parts.
 */
export function drawArcAt(
  random: Random,
  mode: Mode,
  aim: Aim,
  parts: {
    wire: WireSpec;
    gas: GasSpec;
    probe: ProbeSpec;
    transitionA: number;
    fallRangeV: readonly [number, number];
    draw: () => ArcSpec;
  },
): { arc: ArcSpec; point: OperatingPoint } | null {
  const { wire, gas, probe, fallRangeV } = parts;
  const { currentA, meanV } = aim;
  for (let k = 0; k < TRIES; k++) {
    const arc = parts.draw();
    const extensionMm = drawExtensionMm(random, mode, wire.diameterMm);
    const arcMm = drawArcMm(random, mode, gas, currentA, arc.fieldVPerMm);
    const pathOhm = arc.ohm + arc.wireOhmPerMm * extensionMm + 1.5 * arc.strayOhm + probe.leadOhm;
    const fallV = meanV - pathOhm * currentA - arc.fieldVPerMm * arcMm - 20 / (currentA + 10);
    if (fallV < fallRangeV[0] || fallV > fallRangeV[1]) continue;
    arc.fallV = fallV;
    const { diameterMm, alpha, beta } = wire;
    const { transitionA } = parts;
    const terminalV = meanV - probe.leadOhm * currentA;
    return {
      arc,
      point: {
        currentA,
        meanV: terminalV,
        arcMm,
        extensionMm,
        diameterMm,
        alpha,
        beta,
        transitionA,
      },
    };
  }
  return null;
}

/** Teaching texts have 6 to 10 mm in dip transfer; more with thick wires and in free flight, common practice. */
function drawExtensionMm(random: Random, mode: Mode, diameterMm: number): number {
  const thick = 10 * Math.max(0, diameterMm - 0.8);
  if (mode === 'short-circuit') return random.uniform(6, 11 + thick);
  return random.uniform(8 + 0.5 * thick, 15 + thick);
}

/**
 * Length of the arc column; below 0 where the voltage is a little less than a standing arc needs, so that the wire
 * must reach the pool. In CO2 arcs are short, often buried, and drops touch. Own choice.
 */
function drawArcMm(
  random: Random,
  mode: Mode,
  gas: GasSpec,
  currentA: number,
  fieldVPerMm: number,
): number {
  if (mode === 'short-circuit') {
    const shortV = random.uniform(0.002, 0.03) * Math.max(10, currentA - 25);
    return -shortV / fieldVPerMm;
  }
  if (mode === 'globular') {
    return gas.co2Percent >= 25 ? random.uniform(-0.5, 2.5) : random.uniform(-0.5, 4);
  }
  return mode === 'spray' ? random.uniform(2, 9) : random.uniform(1.5, 8);
}
