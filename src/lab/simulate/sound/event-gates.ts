import { pulseRises } from '../physics/pulse-rises.js';
import type { ArcRun } from '../run.js';
import { LIVE_BLOCK } from './decimate.js';
import type { EventKind } from './event-kinds.js';

/** Times of all events that can be heard, s. */
export function eventTimes(run: ArcRun): Record<EventKind, number[]> {
  const { shorts, drops } = run.truth;
  return {
    short: shorts.map(({ startS }) => startS),
    reignition: shorts.map(({ endS }) => endS),
    drop: drops.map(({ timeS }) => timeS),
    pulse: pulseRises(run),
  };
}

/** A series that is 0 but near events. */
export interface GatedSeries {
  samples: Float32Array;
  /** 1 for each {@link LIVE_BLOCK} samples in which something is there. */
  isLive: Uint8Array;
}

/**
 * How long before and after an event the change of power counts as its own, and how soft the ends are, s: own
 * choice. A contact and a parting bridge change the current for some milliseconds; a drop that leaves is a step
 * of voltage within a fraction of one.
 */
const REACH_S = {
  short: { before: 2e-4, after: 1e-3, soft: 2e-4 },
  reignition: { before: 4e-4, after: 2.5e-3, soft: 3e-4 },
  drop: { before: 6e-4, after: 6e-4, soft: 3e-4 },
} as const;

/**
 * The share of `slope` (change of power, the unrest of the root left out) that each kind of event brings about. A
 * parting bridge comes before a contact, both before a drop. Where the source pulses, what is left is all of
 * the pulses: the drop that leaves as a pulse falls cannot be told from the fall.
 */
export function gatedByEvents(
  run: ArcRun,
  slope: Float32Array,
  times: Readonly<Record<EventKind, readonly number[]>>,
): Partial<Record<EventKind, GatedSeries>> {
  const rateHz = run.powerRateHz;
  const pulsed = run.scenario.source.kind === 'pulsed';
  const left = new Float32Array(slope.length).fill(1);
  const out: Partial<Record<EventKind, GatedSeries>> = {};
  for (const kind of ['reignition', 'short', 'drop'] as const) {
    if (times[kind].length === 0 || (kind === 'drop' && pulsed)) continue;
    const gate = new Float32Array(slope.length);
    for (const timeS of times[kind]) open(gate, timeS * rateHz, REACH_S[kind], rateHz);
    out[kind] = take(slope, gate, left);
  }
  if (pulsed) out.pulse = take(slope, new Float32Array(slope.length).fill(1), left);
  return out;
}

/** Raises the gate about an event, with raised-cosine ends. */
function open(
  gate: Float32Array,
  at: number,
  reach: { before: number; after: number; soft: number },
  rateHz: number,
): void {
  const from = at - reach.before * rateHz;
  const to = at + reach.after * rateHz;
  const soft = reach.soft * rateHz;
  const end = Math.min(gate.length, Math.floor(to) + 1);
  for (let i = Math.max(0, Math.ceil(from)); i < end; i++) {
    const inside = Math.min(1, (i - from) / soft, (to - i) / soft);
    const value = 0.5 - 0.5 * Math.cos(Math.PI * inside);
    if (value > gate[i]!) gate[i] = value;
  }
}

/** What the gate lets through of what is `left`, and takes it from that. */
function take(slope: Float32Array, gate: Float32Array, left: Float32Array): GatedSeries {
  const isLive = new Uint8Array(Math.ceil(slope.length / LIVE_BLOCK));
  for (let i = 0; i < gate.length; i++) {
    const share = gate[i]! * left[i]!;
    if (share === 0) {
      gate[i] = 0;
      continue;
    }
    left[i]! -= share;
    gate[i] = share * slope[i]!;
    isLive[Math.floor(i / LIVE_BLOCK)] = 1;
  }
  return { samples: gate, isLive };
}
