import type { EventKind, ForeignMode, ForeignTruth } from '../world.js';
import type { Crossing } from './crossing.js';
import type { Plan } from './plan.js';

/** The truth, and how sure it can be: `clear` is false for arcs between two modes. */
export interface Naming {
  truth: ForeignTruth;
  clear: boolean;
  /** Share of the metal that crossed by bridges. */
  bridgedShare: number;
}

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/**
 * Names the arc by its metal alone, from `fromS` on: most of it by bridges is short-circuit; else
 * drops
 * larger than a quarter over the wire are globular; else small drops, with pulses or without.
 */
export function nameArc(seen: Crossing, plan: Plan, durationS: number, fromS: number): Naming {
  const eventsS: Record<EventKind, number[]> = { short: [], reignition: [], drop: [], pulse: [] };
  const counted = { short: 0, reignition: 0, drop: 0, pulse: 0 };
  const diameters: number[] = [];
  let bridged = 0;
  let free = 0;
  for (const s of seen.seen) {
    eventsS[s.kind].push(s.atS);
    if (s.atS < fromS) continue;
    counted[s.kind]++;
    if (s.kind === 'reignition') bridged += s.volumeMm3;
    if (s.kind !== 'drop') continue;
    free += s.volumeMm3;
    diameters.push(Math.cbrt((6 * s.volumeMm3) / Math.PI));
  }
  const spanS = durationS - fromS;
  const share = bridged / Math.max(1e-9, bridged + free);
  const drop = diameters.length > 0 ? median(diameters) : null;
  const wires = (drop ?? 0) / plan.combo.wireMm;
  const perPulse = counted.drop / Math.max(1, counted.pulse);
  let mode: ForeignMode;
  if (share > 0.5) mode = 'short-circuit';
  else if (wires > 1.25) mode = 'globular';
  else mode = plan.pulse === null ? 'spray' : 'pulsed-spray';
  // Own choice: not clear where much of the metal goes the other way, or the drop is about the
  // limit, or
  // pulses do not carry one or two drops.
  let clear = share > 0.7 || share < 0.4;
  if (share <= 0.5 && wires > 1.18 && wires < 1.4) clear = false;
  if (mode === 'spray' && counted.short / spanS > 8) clear = false;
  if (mode === 'pulsed-spray' && (perPulse < 0.75 || perPulse > 2.1)) clear = false;
  return {
    clear,
    bridgedShare: share,
    truth: {
      mode,
      shortsPerS: counted.short / spanS,
      dropsPerS: counted.drop / spanS,
      dropDiameterMm: mode === 'short-circuit' && share > 0.9 ? null : drop,
      pulseHz: counted.pulse > 0 ? counted.pulse / spanS : null,
      eventsS,
    },
  };
}
