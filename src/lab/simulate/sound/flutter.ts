import { MODES, type Mode, type Random } from '../../../core/index.js';
import { drift } from '../noise/noise-tools.js';
import type { ArcRun } from '../run.js';
import { sometimes } from '../sometimes.js';

/** How unsteady the hiss is, as standard deviations of its level (ln) and corners in Hz. */
export interface FlutterSpec {
  /** Of the jet by itself, whatever crosses. */
  own: number;
  ownHz: number;
  /** By what crosses the gap: a hanging drop swings and shades the jet, a stream of small ones hardly does. */
  depth: Readonly<Record<Mode, number>>;
  hz: number;
}

/**
 * Own choice, kept wide: a jet nearly at rest of itself, shaken most by big drops. A spray is described as a
 * steady hiss, globular transfer as irregular (common practice, no source).
 */
export function drawFlutter(random: Random): FlutterSpec {
  return {
    own: random.logUniform(0.003, 0.12),
    ownHz: random.logUniform(3, 150),
    depth: {
      'short-circuit': sometimes(random, 0.5, 0.03, 0.3),
      globular: sometimes(random, 0.7, 0.05, 0.6),
      spray: sometimes(random, 0.3, 0.02, 0.12),
      'pulsed-spray': sometimes(random, 0.3, 0.02, 0.12),
    },
    hz: random.logUniform(4, 50),
  };
}

/** Gain of the hiss over time, 1 at rest, deeper in each segment the more metal crosses in the shaken way. */
export function flutter(
  run: ArcRun,
  spec: FlutterSpec,
  rateHz: number,
  random: Random,
): Float64Array {
  const count = Math.floor(run.durationS * rateHz);
  const own = drift(random, rateHz, count, spec.ownHz);
  const shaken = drift(random, rateHz, count, spec.hz);
  const level = own.map((state) => spec.own * state);
  for (const { startS, endS, shares } of run.truth.segments) {
    const depth = MODES.reduce((sum, mode) => sum + shares[mode] * spec.depth[mode], 0);
    const end = Math.min(count, Math.floor(endS * rateHz));
    for (let i = Math.floor(startS * rateHz); i < end; i++) level[i]! += depth * shaken[i]!;
  }
  return level.map(Math.exp);
}
