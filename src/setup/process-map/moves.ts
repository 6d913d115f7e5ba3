import { type Range, range } from '../sourced.js';
import type { ProcessMap } from './boundary-lines.js';
import { type FedWire, feedOfCurrent } from './feed-current.js';
import type { MapPoint } from './likelihood.js';
import type { Outcome } from './outcomes.js';
import { likely } from './spread.js';
import { ampsFor, reachableAmps, sweetV, voltsFor } from './windows.js';

/** A change of volts at the feeder, feed kept. */
export interface VoltsMove {
  /** Volts to add, the less and the more; both negative for a step down. */
  byV: Range;
  targetV: Range;
}

/** A change of wire feed, volts kept. */
export interface FeedMove {
  targetA: Range;
  /** m/min; null where the wire's feed is not known. */
  targetMPerMin: Range | null;
  up: boolean;
}

/** Widest target, V, so that the advice stays a setting and not a region; own choice. */
const TARGET_WIDTH_V = 2.5;

/** A feed changed by more than this makes another weld; volts are moved first then. Own choice. */
const FARTHEST_FEED_SHARE = 0.4;

/** From the near edge of the window towards the middle of the published ones. */
export function target(map: ProcessMap, outcome: Outcome, point: MapPoint, full: Range): Range {
  const volts = point.voltageV.mean;
  const sweet = sweetV(map, outcome, point.currentA.mean);
  if (volts < sweet) {
    const from = Math.max(full.min, Math.min(volts + 0.5, full.max));
    const to = Math.min(full.max, Math.max(from + 1, Math.min(sweet, from + TARGET_WIDTH_V)));
    return rounded(range(from, to));
  }
  const to = Math.min(full.max, Math.max(volts - 0.5, full.min));
  const from = Math.max(full.min, Math.min(to - 1, Math.max(sweet, to - TARGET_WIDTH_V)));
  return rounded(range(from, to));
}

/** The middle of the published windows with a volt or so to each side. */
export function aroundSweet(
  map: ProcessMap,
  outcome: Outcome,
  currentA: number,
  full: Range,
): Range {
  const sweet = Math.min(Math.max(sweetV(map, outcome, currentA), full.min), full.max);
  const half = TARGET_WIDTH_V / 2;
  return rounded(range(Math.max(full.min, sweet - half), Math.min(full.max, sweet + half)));
}

export function feedMove(
  map: ProcessMap,
  outcome: Outcome,
  { voltageV, currentA }: MapPoint,
  wire: FedWire,
): FeedMove | null {
  const window = ampsFor(map, outcome, voltageV);
  if (window === null) return null;
  const { full } = window;
  if (currentA.mean >= full.min && currentA.mean <= full.max) return null;
  const up = currentA.mean < full.min;
  const change = Math.abs((up ? full.min : full.max) - currentA.mean) / currentA.mean;
  if (change > FARTHEST_FEED_SHARE) return null;
  const span = Math.min(full.max - full.min, 0.12 * currentA.mean);
  const targetA = up ? range(full.min, full.min + span) : range(full.max - span, full.max);
  return asFeed(wire, targetA, up);
}

export function bothMoves(
  map: ProcessMap,
  outcome: Outcome,
  { currentA }: MapPoint,
  wire: FedWire,
): { feed: FeedMove; targetV: Range } | null {
  const amps = reachableAmps(map, outcome);
  if (amps === null) return null;
  const up = currentA.mean < amps.min;
  const from = up ? amps.min * 1.05 : Math.max(amps.min, amps.max * 0.85);
  const to = Math.min(amps.max, up ? from * 1.12 : amps.max);
  const middle = (from + to) / 2;
  const window = voltsFor(map, outcome, likely(middle, middle * 0.03));
  if (window === null) return null;
  const targetV = aroundSweet(map, outcome, middle, window.full);
  return { feed: asFeed(wire, range(from, to), up), targetV };
}

function asFeed(wire: FedWire, targetA: Range, up: boolean): FeedMove {
  const [low, high] = [feedOfCurrent(wire, targetA.min), feedOfCurrent(wire, targetA.max)];
  const targetMPerMin =
    low === null || high === null ? null : range(roundTo(low, 0.1), roundTo(high, 0.1));
  return { targetA: range(Math.round(targetA.min), Math.round(targetA.max)), targetMPerMin, up };
}

const roundTo = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(3));
export const roundV = (volts: number): number => roundTo(volts, 0.5);
export const rounded = ({ min, max }: Range): Range => range(roundV(min), roundV(max));
