import { type Range, range, type Sourced } from '../sourced.js';
import type { ProcessMap } from './boundary-lines.js';
import { LOAD_LINE } from './boundary-rows.js';
import { likelihoodsAt } from './likelihood.js';
import type { Outcome } from './outcomes.js';
import { type Likely, NORMAL_NODES } from './spread.js';

/** A window of volts at the feeder, or of amperes, in which an outcome is to be expected. */
export interface Window {
  /** Likelihood stays near its best throughout. */
  full: Range;
  /** Best likelihood within it, 0 to 1. */
  best: number;
}

/** Share of the best likelihood that still counts as inside, and the least best; own choice. */
const NEAR_BEST = 0.85;
const LEAST_BEST = 0.5;

const VOLTS: Range = { min: 9, max: 46 };
const STEP_V = 0.2;
const AMPS: Range = { min: 30, max: 560 };
const STEP_A = 4;

/**
 * Middles of the published windows: dip of steel below the load line of wire and gas, spray of steel along
 * a line of its own, which rises less than the load line. Aluminium and the others: midway between the limits.
 */
export const SWEET_V = {
  dipFromLoadLine: -2.6,
  sprayVolts: 18.3,
  spraySlope: 0.033,
  source: 'middles of the published windows (data sheet, MAG tables (a) and (b), Modern Welding)',
  certainty: 'X',
} as const satisfies Sourced & Record<string, unknown>;

/** Volts in which an outcome is likeliest at a current; null where none reaches one half. */
export function voltsFor(map: ProcessMap, outcome: Outcome, currentA: Likely): Window | null {
  return windowOf(VOLTS, STEP_V, (volts) =>
    meanOver(currentA, (amps) => likelihoodsAt(map, volts, amps)[outcome]),
  );
}

/** Amperes in which an outcome is likeliest at a voltage; null where none reaches one half. */
export function ampsFor(map: ProcessMap, outcome: Outcome, voltageV: Likely): Window | null {
  return windowOf(AMPS, STEP_A, (amps) =>
    meanOver(voltageV, (volts) => likelihoodsAt(map, volts, amps)[outcome]),
  );
}

/** Amperes at which the best voltage makes an outcome nearly as likely as it ever gets; null where it stays below one half. */
export function reachableAmps(map: ProcessMap, outcome: Outcome): Range | null {
  const window = windowOf(AMPS, STEP_A, (amps) => {
    const ends = endsOf(map, outcome, amps);
    const volts = [sweetV(map, outcome, amps), (ends.min + ends.max) / 2];
    return Math.max(...volts.map((one) => likelihoodsAt(map, one, amps)[outcome]));
  });
  return window?.full ?? null;
}

/** Voltage in the middle of the published windows for a mode at a current. */
export function sweetV(map: ProcessMap, outcome: Outcome, currentA: number): number {
  const { material } = map.wire;
  const ends = endsOf(map, outcome, currentA);
  const middle = (ends.min + ends.max) / 2;
  const steel = material === 'carbon-steel' || material === 'stainless-steel';
  if (!steel || (outcome !== 'dip' && outcome !== 'spray')) return middle;
  const wanted =
    outcome === 'spray'
      ? SWEET_V.sprayVolts + SWEET_V.spraySlope * currentA
      : loadLineV(map, currentA) + SWEET_V.dipFromLoadLine;
  if (ends.max - ends.min < 1) return middle;
  return Math.min(Math.max(wanted, ends.min + 0.5), ends.max - 0.5);
}

/** The guide line, moved for wire and gas as every boundary is. */
export function loadLineV({ rows, limitV }: ProcessMap, currentA: number): number {
  const unmoved = rows['long-arc'].volts + rows['long-arc'].slope * currentA;
  const shift = limitV('long-arc', currentA).mean - unmoved;
  return LOAD_LINE.volts + LOAD_LINE.slope * currentA + shift;
}

function endsOf(map: ProcessMap, outcome: Outcome, currentA: number): Range {
  const at = (name: Parameters<ProcessMap['limitV']>[0]): number => map.limitV(name, currentA).mean;
  if (outcome === 'dip') return range(at('stub'), at('dip-top'));
  if (outcome === 'globular') return range(at('dip-top'), at('long-arc'));
  return range(at('spray-floor'), at('long-arc'));
}

/** Mean of a function over a normal value. */
function meanOver({ mean, sd }: Likely, at: (value: number) => number): number {
  return NORMAL_NODES.reduce(
    (sum, [z, weight]) => sum + weight * at(Math.max(1, mean + z * sd)),
    0,
  );
}

function windowOf(span: Range, step: number, likelihood: (at: number) => number): Window | null {
  const count = Math.round((span.max - span.min) / step) + 1;
  const values = Array.from({ length: count }, (_, i) => likelihood(span.min + i * step));
  const best = Math.max(...values);
  if (best < LEAST_BEST) return null;
  const peak = values.indexOf(best);
  const inside = (i: number): boolean => (values[i] ?? 0) >= NEAR_BEST * best;
  let [low, high] = [peak, peak];
  while (inside(low - 1)) low--;
  while (inside(high + 1)) high++;
  return { full: range(span.min + low * step, span.min + high * step), best };
}
