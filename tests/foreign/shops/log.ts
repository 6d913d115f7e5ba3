import type { ForeignArc, ForeignLog } from '../world.js';
import type { Gear } from './gear.js';
import type { Plan } from './plan.js';
import type { Dice } from './random.js';

/** A log whose clock is its own, and when its arc starts. */
export interface DrawnLog {
  log: ForeignLog;
  driftPpm: number;
}

/**
 * The shop's logger on the torch: started by another hand than the sound, a clock up to 50 ppm off,
 * a
 * channel of limited bandwidth, noise and steps of the converter. Before the arc the trigger is
 * pulled and
 * the open circuit stands for a moment.
 */
export function drawLog(arc: ForeignArc, plan: Plan, gear: Gear, dice: Dice): DrawnLog {
  const { rateHz, bandHz, bits, noiseV, noiseA } = gear.log;
  const driftPpm = dice.between(-50, 50);
  const leadS = dice.between(0.2, 3.5);
  const tailS = dice.between(0.2, 1.5);
  const triggerS = dice.between(0.05, 0.18);
  const arcSamples = arc.trace.voltageV.length;
  const lead = Math.round(leadS * rateHz);
  // A fast clock counts more samples for the same arc.
  const perSample = arc.trace.sampleRateHz / (rateHz * (1 + driftPpm * 1e-6));
  const during = Math.floor(arcSamples / perSample);
  const length = lead + during + Math.round(tailS * rateHz);
  const voltageV = new Float32Array(length);
  const currentA = new Float32Array(length);
  const openV = plan.setV * 1.1 + 4; // own choice
  const keep = Math.exp((-2 * Math.PI * bandHz) / arc.trace.sampleRateHz);
  const smoothV = smooth(arc.trace.voltageV, keep, openV);
  const smoothA = smooth(arc.trace.currentA, keep, 0);
  const zeroV = dice.between(-0.15, 0.15);
  const zeroA = dice.between(-2, 2);
  const mainsV = dice.scale(0.01, 0.15);
  const stepV = 80 / 2 ** bits;
  const stepA = 1000 / 2 ** bits;
  const trigger = lead - Math.round(triggerS * rateHz);
  for (let n = 0; n < length; n++) {
    let v = n >= trigger && n < lead ? openV * (1 - Math.exp((trigger - n) / (0.004 * rateHz))) : 0;
    let a = 0;
    if (n >= lead && n < lead + during) {
      const at = (n - lead) * perSample;
      const k = Math.floor(at);
      const part = at - k;
      const v0 = smoothV[k] ?? 0;
      const a0 = smoothA[k] ?? 0;
      v = v0 + part * ((smoothV[k + 1] ?? v0) - v0);
      a = a0 + part * ((smoothA[k + 1] ?? a0) - a0);
    }
    v +=
      zeroV + noiseV * dice.gauss() + mainsV * Math.sin((2 * Math.PI * gear.mainsHz * n) / rateHz);
    a += zeroA + noiseA * dice.gauss();
    voltageV[n] = Math.round(v / stepV) * stepV;
    currentA[n] = Math.round(a / stepA) * stepA;
  }
  return {
    log: {
      sampleRateHz: rateHz,
      voltageV,
      currentA,
      arcStartS: lead / rateHz,
      arcEndS: (lead + during) / rateHz,
    },
    driftPpm,
  };
}

/** Two equal lags one after the other. */
function smooth(x: Float32Array, keep: number, startsAt: number): Float32Array {
  const y = new Float32Array(x.length);
  let first = startsAt;
  let second = startsAt;
  for (let n = 0; n < x.length; n++) {
    first = keep * first + (1 - keep) * (x[n] ?? 0);
    second = keep * second + (1 - keep) * first;
    y[n] = second;
  }
  return y;
}
