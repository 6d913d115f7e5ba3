import { MODES, type Mode } from '../core/index.js';
import type { Boundaries } from './boundaries.js';
import type { SourceKind } from './choices.js';
import { likelihoods, likelihoodsAt, sprayCurrentShare } from './process-map/likelihood.js';
import { modeShares } from './process-map/outcomes.js';
import { fromRange } from './process-map/spread.js';
import type { Range } from './sourced.js';

/** `yes`: the mode that is to be expected; `possible`: it may come; `no`: not there. */
export type Permit = 'yes' | 'possible' | 'no';

/** Volts at the feeder while welding, amperes of mean current. Null means not known. */
export interface WorkingPoint {
  voltageV: Range | null;
  currentA: Range | null;
}

export type Permits = Record<Mode, Permit>;

/** Share of the arc time that a mode is expected to take, 0 to 1. */
export type ModeShares = Record<Mode, number>;

/** Expected share from which a mode is the one to expect, and below which it is not there; own choice. */
const EXPECTED = 0.75;
const ABSENT = 0.05;

/** What may be expected over the whole of a point; a part that is not known may be anything. */
export function permits(
  point: WorkingPoint,
  bounds: Boundaries,
  source: SourceKind | null,
): Permits {
  const known = sharesOf(point, bounds, source);
  if (known !== null) return wordsOf(known);
  // What is not known may be anything that the process runs at (common practice, no source).
  const volts = steps(point.voltageV ?? { min: 14, max: 34 });
  const amps = steps(point.currentA ?? { min: 60, max: 400 });
  const cells = volts.flatMap((v) => amps.map((a) => permitsAt(v, a, bounds, source)));
  const combine = (mode: Mode): Permit => {
    const words = new Set(cells.map((cell) => cell[mode]));
    return words.size > 1 ? 'possible' : cells[0]![mode];
  };
  return Object.fromEntries(MODES.map((mode) => [mode, combine(mode)])) as Permits;
}

/** Expected shares of the modes at a point; null where volts or amperes are not known. */
export function sharesOf(
  { voltageV, currentA }: WorkingPoint,
  bounds: Boundaries,
  source: SourceKind | null,
): ModeShares | null {
  if (voltageV === null || currentA === null) return null;
  const point = { voltageV: fromRange(voltageV), currentA: fromRange(currentA), correlation: 0 };
  const { map } = bounds;
  const steady = modeShares(
    likelihoods(map, point),
    sprayCurrentShare(map, point.currentA.mean) / Math.max(map.spray.share, 0.01),
  );
  return withPulses(steady, (voltageV.min + voltageV.max) / 2, bounds, source);
}

function steps({ min, max }: Range): number[] {
  const count = max > min ? 9 : 1;
  return Array.from({ length: count }, (_, i) => min + ((max - min) * i) / Math.max(1, count - 1));
}

/** One working point. A source said to pulse is held to pulse; a steady one to not. */
export function permitsAt(
  v: number,
  a: number,
  bounds: Boundaries,
  source: SourceKind | null,
): Permits {
  const { map } = bounds;
  const steady = modeShares(likelihoodsAt(map, v, a), sprayCurrentShare(map, a));
  return wordsOf(withPulses(steady, v, bounds, source));
}

function wordsOf(shares: ModeShares): Permits {
  const word = (share: number): Permit =>
    share >= EXPECTED ? 'yes' : share < ABSENT ? 'no' : 'possible';
  return Object.fromEntries(MODES.map((mode) => [mode, word(shares[mode])])) as Permits;
}

/** Mean volts of pulsed programmes lie within 16–34 V (common practice, no source). */
const PULSED_V: Range = { min: 16, max: 34 };
/** Shares under a source that pulses, or may; own choice. */
const PULSES = 0.96;
const MAY_PULSE = 0.1;

function withPulses(
  steady: Omit<ModeShares, 'pulsed-spray'>,
  v: number,
  { map, spray }: Boundaries,
  source: SourceKind | null,
): ModeShares {
  const carries = spray === 'no' ? 0 : map.spray.share;
  const inside = v >= PULSED_V.min && v <= PULSED_V.max;
  if (source === 'steady' || carries === 0 || !inside) return { ...steady, 'pulsed-spray': 0 };
  if (source === null) return { ...steady, 'pulsed-spray': MAY_PULSE * carries };
  const pulsed = PULSES * carries;
  const rest = 1 - pulsed;
  return {
    'short-circuit': steady['short-circuit'] * rest,
    globular: steady.globular * rest,
    spray: steady.spray * Math.max(rest, 0.3),
    'pulsed-spray': pulsed,
  };
}
