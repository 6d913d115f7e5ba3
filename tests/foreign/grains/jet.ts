import type { Dice } from './dice.js';
import { Biquad, rms, scale } from './filters.js';
import { SlowCurve } from './slow.js';

/**
 * Turbulent hiss of a jet: white noise through a few broad bands whose gains wander slowly. Brought
 * to an
 * effective value of 1. One law for arcs of every mode and for gas that flows without an arc.
 */
export function drawJet(dice: Dice, length: number, rateHz: number): Float32Array {
  const out = new Float32Array(length);
  const durationS = length / rateHz;
  const count = dice.whole(3, 5);
  const tilt = dice.between(-1.5, -0.2);
  const bands = Array.from({ length: count }, (_, k) => {
    const hz = Math.min(0.42 * rateHz, 400 * 2 ** ((4.3 * (k + dice.between(0.1, 0.9))) / count));
    return {
      filter: Biquad.band(hz, rateHz, dice.ratio(0.4, 1.6)),
      gain: (hz / 2000) ** tilt * dice.ratio(0.5, 1.6),
      curve: new SlowCurve(dice, durationS, dice.between(0.05, 0.3), 0.3, 12),
    };
  });
  const block = 64;
  const white = new Float32Array(block);
  for (let from = 0; from < length; from += block) {
    const size = Math.min(block, length - from);
    for (let k = 0; k < size; k++) white[k] = dice.noise();
    for (const { filter, gain, curve } of bands) {
      const g = gain * Math.exp(curve.at(from / rateHz));
      for (let k = 0; k < size; k++) {
        out[from + k] = (out[from + k] as number) + g * filter.step(white[k] as number);
      }
    }
  }
  return scale(out, 1 / Math.max(1e-9, rms(out)));
}

/**
 * What sounds all the time besides the jet: rumble of the bath, at times a nozzle's whistle and
 * mains ripple.
 */
export function addSteady(dice: Dice, out: Float32Array, rateHz: number): void {
  const durationS = out.length / rateHz;
  const rumble = Biquad.band(dice.ratio(30, 180), rateHz, dice.ratio(0.5, 2));
  const rumbleGain = dice.ratio(0.3, 5);
  const whistle = dice.chance(0.15) ? dice.ratio(0.03, 0.2) : 0;
  const whistleHz = dice.ratio(2000, 7000);
  const drift = new SlowCurve(dice, durationS, 0.004, 0.5, 20);
  const breath = new SlowCurve(dice, durationS, 0.4, 0.5, 10);
  const ripple = dice.chance(0.35) ? dice.ratio(0.03, 0.35) : 0;
  const rippleHz = dice.pick([100, 300, 120, 360]);
  let phase = 0;
  for (let k = 0; k < out.length; k++) {
    let y = rumbleGain * rumble.step(dice.next() * 2 - 1);
    if (whistle > 0) {
      const t = k / rateHz;
      phase += (whistleHz / rateHz) * (1 + drift.at(t));
      y += whistle * 1.4 * Math.sin(2 * Math.PI * phase) * Math.exp(breath.at(t));
    }
    if (ripple > 0) {
      const turn = (2 * Math.PI * rippleHz * k) / rateHz;
      y += ripple * (Math.sin(turn) + 0.3 * Math.sin(2 * turn + 1));
    }
    out[k] = (out[k] as number) + y;
  }
}
