import type { Condition } from '../world.js';
import { code, drawCoder, losePackets, telephone } from './coder.js';
import { filter, rms, scale, section, typicalLevel } from './filters.js';
import { clipHard, clipSoft, gainControl, toPeak, toSixteenBit } from './levels.js';
import type { Rng } from './rng.js';

/** How likely a recorder has gain control in each condition (own choice). */
const CONTROLLED: Record<Condition, number> = {
  quiet: 0,
  shop: 0.35,
  'loud-shop': 0.35,
  clipped: 0.75,
  lossy: 0.5,
  'open-ended': 0.35,
  switched: 0.35,
};

/** Everything in a recorder that is not linear; `x` becomes the recording within full scale. */
export function degrade(
  rng: Rng,
  x: Float32Array,
  rateHz: number,
  condition: Condition,
  call: boolean,
): Float32Array {
  const controlled = rng.chance(CONTROLLED[condition]);
  if (controlled) gainControl(rng, x, rateHz);
  const soft = condition !== 'quiet' && rng.chance(0.2);
  if (soft) clipSoft(x, rms(x) * rng.logRange(1.5, 8));
  const hard = condition === 'clipped' || (condition !== 'quiet' && rng.chance(0.05));
  // well inside the signal: 0.3 to 3 sigma
  if (hard) clipHard(x, rms(x) * rng.logRange(0.3, 3));
  const full = rng.logRange(0.2, 0.999);
  if (hard) toPeak(x, full);
  else if (controlled || soft) {
    // the recorder's own level, again without regard to what the peaks of a mode are like
    scale(x, 10 ** (rng.range(-40, -18) / 20) / Math.max(1e-9, typicalLevel(x, rateHz)));
    clipHard(x, 0.999);
  }
  let out = x;
  if (condition === 'lossy') {
    if (!call || rng.chance(0.6)) out = code(x, rateHz, drawCoder(rng, rateHz, call));
    if (call) {
      telephone(toPeak(out, rng.logRange(0.1, 0.95)));
      if (rng.chance(0.4)) losePackets(rng, out, rateHz);
    } else if (rng.chance(0.15)) losePackets(rng, out, rateHz);
    if (rng.chance(0.15)) filter(out, [section('lowpass', 0.4 * rateHz, 0.7, rateHz)]);
  } else if (condition !== 'quiet' && rng.chance(0.15)) {
    out = code(x, rateHz, {
      ...drawCoder(rng, rateHz, false),
      step: rng.range(0.2, 0.6),
      suppress: 0,
    });
  }
  let top = 0;
  for (const v of out) top = Math.max(top, Math.abs(v));
  if (top > 1) scale(out, 0.999 / top);
  return toSixteenBit(out);
}
