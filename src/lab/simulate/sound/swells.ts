import type { Random } from '../../../core/index.js';
import { pulseRises } from '../physics/pulse-rises.js';
import type { ArcRun } from '../run.js';
import { sometimes } from '../sometimes.js';

/** How the hiss swells at single events: rises over its level at rest, and how long they last. */
export interface SwellSpec {
  /** At the end of a short, at a drop of the wire's size, at the rise of a pulse; 0 for none. */
  short: number;
  drop: number;
  pulse: number;
  /** Power of the drop's size, spread (ln) from event to event, of pulses a third of it. */
  dropPower: number;
  spread: number;
  decayS: number;
}

/** All own choice, kept wide. */
export function drawSwells(random: Random): SwellSpec {
  return {
    short: sometimes(random, 0.85, 0.5, 20),
    drop: sometimes(random, 0.7, 0.1, 8),
    pulse: sometimes(random, 0.8, 0.1, 5),
    dropPower: random.uniform(0.5, 3),
    spread: random.uniform(0.2, 0.8),
    decayS: random.logUniform(5e-4, 0.012),
  };
}

/** Gain of the hiss over time, 1 at rest: each event lifts it at once, and the lift dies away. */
export function swells(run: ArcRun, spec: SwellSpec, rateHz: number, random: Random): Float64Array {
  const gain = new Float64Array(Math.floor(run.durationS * rateHz));
  const lift = (timeS: number, rise: number, spread: number): void => {
    const at = Math.round(timeS * rateHz);
    if (at < gain.length) gain[at]! += rise * Math.exp(spread * random.normal());
  };
  for (const { endS } of run.truth.shorts) lift(endS, spec.short, spec.spread);
  const wire = run.scenario.wire.diameterMm;
  for (const { timeS, diameterMm } of run.truth.drops)
    lift(timeS, spec.drop * (diameterMm / wire) ** spec.dropPower, spec.spread);
  for (const timeS of pulseRises(run)) lift(timeS, spec.pulse, spec.spread / 3);
  const decay = Math.exp(-1 / (spec.decayS * rateHz));
  let state = 0;
  for (let i = 0; i < gain.length; i++) {
    state = state * decay + gain[i]!;
    gain[i] = 1 + state;
  }
  return gain;
}
