import type { ArcRun } from '../run.js';

/** Rise of power within {@link RISE_S} that counts as strength 1, W. */
const TYPICAL_RISE_W = 5000;
/** Time over which the rise is taken, s. */
const RISE_S = 1e-4;
const BEFORE_S = 3e-4;
const AFTER_S = 1e-3;

/**
 * How violent an electrical event is: the steepest rise of arc power about it, 1 for 5 kW within 0.1 ms. An arc
 * that strikes anew and a pulse that rises are measured alike. The measure is own choice; that the sound of an
 * arc follows the rate of change of its power is Drouet & Nadeau, IEEE Trans. PAS-98 (1979) 1632.
 */
export function electricalStrength(run: ArcRun, timeS: number): number {
  const { powerW, powerRateHz } = run;
  const step = Math.round(RISE_S * powerRateHz);
  const from = Math.max(0, Math.round((timeS - BEFORE_S) * powerRateHz));
  const to = Math.min(powerW.length - step, Math.round((timeS + AFTER_S) * powerRateHz));
  let most = 0;
  for (let i = from; i < to; i++) {
    const rise = powerW[i + step]! - powerW[i]!;
    if (rise > most) most = rise;
  }
  return most / TYPICAL_RISE_W;
}
