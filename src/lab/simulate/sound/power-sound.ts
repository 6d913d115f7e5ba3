import { section } from '../devices/filter.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import { decimate } from './decimate.js';
import { gatedByEvents } from './event-gates.js';
import type { EventKind } from './event-kinds.js';

/** Speed of sound in air at 20 °C, m/s: √(1.4 · 287 · 293). */
export const SOUND_SPEED = 343;

/** Pressure at 1 m per rate of change of power, `(gamma − 1)/(4·pi·c²)`: 2.71e-7 Pa·s/W; a compact heat source in free air. */
export const MONOPOLE_AT_1M = 0.4 / (4 * Math.PI * SOUND_SPEED ** 2);

/** Sound that follows the power: all of it, and what of that comes of each kind of event. */
export interface PowerSound {
  whole: Float64Array;
  parts: Partial<Record<EventKind, Float64Array>>;
}

/**
 * The monopole alone: `K/r·d(VI)/dt`, through the finite inertia of the plasma. A jet of 0.07·I² W beside it is
 * own choice. Without `times` nothing is told apart.
 */
export function powerSound(
  run: ArcRun,
  acoustic: AcousticScenario,
  count: number,
  times: Record<EventKind, number[]> | null,
): PowerSound {
  const heard = (slope: Float32Array, isLive?: Uint8Array): Float64Array => {
    const out = decimate(slope, run.powerRateHz, acoustic.rateHz, count, isLive);
    return section('low', acoustic.rateHz, acoustic.pulseHz).run(out);
  };
  const slope = slopeOf(run, acoustic, false);
  const whole = heard(slope);
  const parts: PowerSound['parts'] = {};
  if (times === null) return { whole, parts };
  const clean = run.unrestW === undefined ? slope : slopeOf(run, acoustic, true);
  for (const [kind, gated] of Object.entries(gatedByEvents(run, clean, times)))
    parts[kind as EventKind] = heard(gated.samples, gated.isLive);
  return { whole, parts };
}

/** Pressure at 1 m in free air before anything smooths it, at the rate of the power. */
function slopeOf(run: ArcRun, acoustic: AcousticScenario, atRest: boolean): Float32Array {
  const { powerW, arcCurrentA, powerRateHz } = run;
  const unrestW = atRest ? run.unrestW : undefined;
  const { exponent, jetShare, negativeShare } = acoustic;
  const scale = MONOPOLE_AT_1M * acoustic.pulseGain * powerRateHz;
  const bend = exponent === 1 ? null : absorption(exponent);
  const slope = new Float32Array(powerW.length);
  let last = 0;
  for (let i = 0; i < slope.length; i++) {
    let power = powerW[i]!;
    if (unrestW !== undefined) power -= unrestW[i]!;
    if (jetShare > 0) power += jetShare * (0.07 * arcCurrentA[i]! * arcCurrentA[i]! - power);
    if (bend !== null && power > 0) power = bend(power);
    const change = i === 0 ? 0 : power - last;
    last = power;
    slope[i] = scale * (change < 0 ? change * negativeShare : change);
  }
  return slope;
}

/** Power that the law of `absorbing` leaves as it is, W. */
const UNCHANGED_W = 4000;
/** End of the table, W: 400 A at 100 V. What lies above is worked out. */
const TABLE_W = 40_000;
const TABLE_STEPS = 4096;

/** `4000·(power/4000)^exponent`, read from a table over the root of the power, straight lines between. */
function absorption(exponent: number): (powerW: number) => number {
  const law = (powerW: number): number => UNCHANGED_W * (powerW / UNCHANGED_W) ** exponent;
  const table = new Float64Array(TABLE_STEPS + 2);
  for (let k = 0; k < table.length; k++) table[k] = law(TABLE_W * (k / TABLE_STEPS) ** 2);
  return (powerW) => {
    if (powerW >= TABLE_W) return law(powerW);
    const at = Math.sqrt(powerW / TABLE_W) * TABLE_STEPS;
    const k = Math.floor(at);
    return table[k]! + (at - k) * (table[k + 1]! - table[k]!);
  };
}
