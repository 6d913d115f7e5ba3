/** What recorders do to level: gain control, clipping, whole steps. */
import type { Random } from './random.js';

/** Gain control as in phones: attack and release of 3 to 250 ms, in place. */
export function gainControl(x: Float32Array, rateHz: number, r: Random): void {
  const attack = 1 - Math.exp(-1 / (rateHz * r.logRange(0.003, 0.08)));
  const release = 1 - Math.exp(-1 / (rateHz * r.logRange(0.03, 0.25)));
  const power = r.range(0.4, 0.97); // 1: every level ends the same
  let sum = 0;
  for (let i = 0; i < x.length; i++) sum += Math.abs(x[i] as number);
  const mean = sum / Math.max(1, x.length) + 1e-9;
  const floor = mean * r.logRange(0.01, 0.2);
  let e = mean;
  for (let i = 0; i < x.length; i++) {
    const a = Math.abs(x[i] as number);
    e += (a > e ? attack : release) * (a - e);
    x[i] = (x[i] as number) * (mean / Math.max(floor, e)) ** power;
  }
}

/** Clips at so many standard deviations of the loud part, hard or soft, and brings the rail to full scale. */
export function clip(x: Float32Array, sigmas: number, hard: boolean, sigma: number): void {
  const rail = Math.max(1e-12, sigmas * sigma);
  for (let i = 0; i < x.length; i++) {
    const v = (x[i] as number) / rail;
    x[i] = hard ? Math.max(-1, Math.min(1, v)) : Math.tanh(v);
  }
}

/** Whole steps of a converter with so many bits, within full scale. */
export function toSteps(x: Float32Array, bits: number): void {
  const top = 2 ** (bits - 1);
  for (let i = 0; i < x.length; i++) {
    x[i] = Math.max(-top, Math.min(top - 1, Math.round((x[i] as number) * top))) / top;
  }
}
