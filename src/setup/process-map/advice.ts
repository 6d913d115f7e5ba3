import type { Mode } from '../../core/index.js';
import type { Polarity, SourceKind } from '../choices.js';
import { type Range, range } from '../sourced.js';
import type { ProcessMap } from './boundary-lines.js';
import type { FedWire } from './feed-current.js';
import { likelihoods, type MapPoint } from './likelihood.js';
import {
  aroundSweet,
  bothMoves,
  type FeedMove,
  feedMove,
  rounded,
  roundV,
  target,
  type VoltsMove,
} from './moves.js';
import { OUTCOME_OF_MODE, type Outcome } from './outcomes.js';
import { type Refusal, refuse } from './refusal.js';
import { weighSeen } from './seen-point.js';
import { voltsFor } from './windows.js';

/** What to do to get a wanted mode. Every move holds only inside the qualified procedure. */
export type Advice =
  | { kind: 'refused'; wanted: Mode; refusal: Refusal }
  /** Pulsing is a programme of the source, not a place on the map. */
  | { kind: 'programme'; wanted: Mode }
  /** The settings suit; nothing to move. */
  | { kind: 'stay'; wanted: Mode; likelihood: number; targetV: Range }
  /** The settings would suit, but what was seen says otherwise: look for the cause before moving anything. */
  | { kind: 'look-first'; wanted: Mode; likelihood: number; fit: number }
  /** The settings may suit, but the volts are too little known. */
  | { kind: 'measure'; wanted: Mode; likelihood: number; targetV: Range }
  | {
      kind: 'move';
      wanted: Mode;
      likelihood: number;
      /** Too little or too much voltage for this feed; `current` where no voltage does it at this feed. */
      trouble: 'too-cold' | 'too-hot' | 'current';
      volts: VoltsMove | null;
      feed: FeedMove | null;
      /** Feed and volts together, where neither alone does it. */
      both: { feed: FeedMove; targetV: Range } | null;
    }
  /** No combination held here gives the mode. */
  | { kind: 'unknown'; wanted: Mode };

/** Likelihood from which settings are said to suit a mode; own choice. */
export const SUITS = 0.6;
/** Below this what was seen contradicts the set-up; own choice. */
const CONTRADICTS = 0.05;
/** The question: a wanted mode, a point, and what was seen there if anything was. */
export interface Question {
  wanted: Mode;
  point: MapPoint;
  wire: FedWire;
  source: SourceKind | null;
  polarity: Polarity | null;
  seen: Outcome | null;
}

/** Direction from a point to a wanted mode. */
export function advise(map: ProcessMap, question: Question): Advice {
  const { wanted } = question;
  const refusal = refuse(map, wanted, question);
  if (refusal !== null) return { kind: 'refused', wanted, refusal };
  if (wanted === 'pulsed-spray') return { kind: 'programme', wanted };
  const outcome = OUTCOME_OF_MODE[wanted];
  const before = likelihoods(map, question.point)[outcome];
  const { seen } = question;
  if (seen === null || seen === outcome) {
    return fromPoint(map, question, question.point, outcome, seen === outcome);
  }
  const weighed = weighSeen(map, question.point, seen);
  if (weighed.fit < CONTRADICTS) {
    if (before >= SUITS)
      return { kind: 'look-first', wanted, likelihood: before, fit: weighed.fit };
    return fromPoint(map, question, question.point, outcome, false);
  }
  return fromPoint(map, question, weighed.point, outcome, false);
}

function fromPoint(
  map: ProcessMap,
  { wanted, wire, seen }: Question,
  point: MapPoint,
  outcome: Outcome,
  gotIt: boolean,
): Advice {
  const likelihood = likelihoods(map, point)[outcome];
  const { voltageV, currentA } = point;
  const window = voltsFor(map, outcome, currentA);
  const volts = voltageV.mean;
  if (window !== null) {
    const inside = volts >= window.full.min && volts <= window.full.max;
    if (gotIt || (likelihood >= SUITS && seen === null)) {
      return { kind: 'stay', wanted, likelihood, targetV: rounded(window.full) };
    }
    if (inside && likelihood < SUITS && seen === null) {
      const targetV = aroundSweet(map, outcome, currentA.mean, window.full);
      return { kind: 'measure', wanted, likelihood, targetV };
    }
    const targetV = target(map, outcome, point, window.full);
    const byV = range(roundV(targetV.min - volts), roundV(targetV.max - volts));
    return {
      kind: 'move',
      wanted,
      likelihood,
      trouble: targetV.max > volts ? 'too-cold' : 'too-hot',
      volts: { byV, targetV },
      feed: feedMove(map, outcome, point, wire),
      both: null,
    };
  }
  if (gotIt)
    return { kind: 'stay', wanted, likelihood, targetV: range(roundV(volts), roundV(volts)) };
  const feed = feedMove(map, outcome, point, wire);
  const both = feed === null ? bothMoves(map, outcome, point, wire) : null;
  if (feed === null && both === null) return { kind: 'unknown', wanted };
  return { kind: 'move', wanted, likelihood, trouble: 'current', volts: null, feed, both };
}
