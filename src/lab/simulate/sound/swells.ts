import type { Random } from '../../../core/index.js';
import type { ArcRun } from '../run.js';
import { sometimes } from '../sometimes.js';
import type { EventKind } from './event-kinds.js';
import { electricalStrength } from './event-strength.js';

/** How the hiss swells at single events: rises over its level at rest, and how long they last. */
export interface SwellSpec {
  /** Where the arc strikes anew or a pulse rises, at strength 1; 0 for none. */
  electrical: number;
  /** Where a drop of the wire's size leaves; 0 for none. */
  drop: number;
  /** Powers of the electrical strength and of the drop's size in wire diameters; spread (ln) from event to event. */
  electricalPower: number;
  dropPower: number;
  spread: number;
  decayS: number;
}

/** All own choice, kept wide; what an event does follows from its own violence or size. */
export function drawSwells(random: Random): SwellSpec {
  return {
    electrical: sometimes(random, 0.75, 0.15, 15),
    drop: sometimes(random, 0.75, 0.15, 15),
    electricalPower: random.uniform(0.4, 1.5),
    dropPower: random.uniform(0.5, 3),
    spread: random.uniform(0.1, 0.8),
    decayS: random.logUniform(5e-4, 0.012),
  };
}

/** Kinds that lift the hiss. */
const LIFTING = ['reignition', 'drop', 'pulse'] as const satisfies readonly EventKind[];

/**
 * What each kind of event adds to the gain of the hiss over time (0 at rest): it rises at once, and dies away. Kinds
 * that add nothing are absent.
 */
export function swells(
  run: ArcRun,
  spec: SwellSpec,
  times: Readonly<Record<EventKind, readonly number[]>>,
  rateHz: number,
  random: Random,
): Partial<Record<EventKind, Float64Array>> {
  const count = Math.floor(run.durationS * rateHz);
  const decay = Math.exp(-1 / (spec.decayS * rateHz));
  const out: Partial<Record<EventKind, Float64Array>> = {};
  for (const kind of LIFTING) {
    const rises = risesOf(run, spec, kind, times[kind]);
    if (rises.length === 0) continue;
    const gain = new Float64Array(count);
    times[kind].forEach((timeS, k) => {
      const at = Math.round(timeS * rateHz);
      const lift = rises[k]! * Math.exp(spec.spread * random.normal());
      if (at >= 0 && at < count) gain[at]! += lift;
    });
    let state = 0;
    for (let i = 0; i < count; i++) {
      state = state * decay + gain[i]!;
      gain[i] = state < 1e-6 ? 0 : state;
    }
    out[kind] = gain;
  }
  return out;
}

function risesOf(
  run: ArcRun,
  spec: SwellSpec,
  kind: (typeof LIFTING)[number],
  times: readonly number[],
): number[] {
  if (kind !== 'drop') {
    if (spec.electrical === 0) return [];
    return times.map((t) => spec.electrical * electricalStrength(run, t) ** spec.electricalPower);
  }
  if (spec.drop === 0) return [];
  const wire = run.scenario.wire.diameterMm;
  return run.truth.drops.map(({ diameterMm }) => spec.drop * (diameterMm / wire) ** spec.dropPower);
}
