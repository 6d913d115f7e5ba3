import type { Random } from '../../../core/index.js';
import { drift } from '../noise/noise-tools.js';
import { sometimes } from '../sometimes.js';

/**
 * How unsteady the hiss is, as standard deviations of its level (ln) and corners in Hz: a fast part that is
 * always there and a slow one that some arcs have, whatever crosses.
 */
export interface FlutterSpec {
  fast: number;
  fastHz: number;
  slow: number;
  slowHz: number;
}

/**
 * Own choice, kept wide, and the same for every arc: that big drops shake the hiss more than small ones is
 * common practice without a figure, so nothing here may tell one from the other.
 */
export function drawFlutter(random: Random): FlutterSpec {
  return {
    fast: random.logUniform(0.003, 0.12),
    fastHz: random.logUniform(3, 150),
    slow: sometimes(random, 0.5, 0.02, 0.4),
    slowHz: random.logUniform(4, 50),
  };
}

/** Rate at which the level is drawn, Hz; straight lines between. */
const LEVEL_HZ = 4000;

/** Gain of the hiss over time, 1 at rest. */
export function flutter(
  count: number,
  spec: FlutterSpec,
  rateHz: number,
  random: Random,
): Float64Array {
  const levels = Math.ceil((count * LEVEL_HZ) / rateHz) + 2;
  const gain = drift(random, LEVEL_HZ, levels, spec.fastHz);
  const slow = drift(random, LEVEL_HZ, levels, spec.slowHz);
  for (let k = 0; k < levels; k++) gain[k] = Math.exp(spec.fast * gain[k]! + spec.slow * slow[k]!);
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const at = (i * LEVEL_HZ) / rateHz;
    const k = Math.floor(at);
    out[i] = gain[k]! + (at - k) * (gain[k + 1]! - gain[k]!);
  }
  return out;
}
