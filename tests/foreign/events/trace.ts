import { drawCurrent, TRACE_HZ } from './current.js';
import { wander } from './filters.js';
import type { Plan } from './plan.js';
import type { Rng } from './rng.js';
import type { Load, Schedule } from './schedule.js';
import { co2Percent } from './windows.js';

export interface Trace {
  currentA: Float32Array;
  voltageV: Float32Array;
  /** Arc length against its mean, 1 on average; 0 while there is no arc. */
  lengthRel: Float32Array;
}

/** Draws current and voltage of an arc from its events and brings their means to the plan. */
export function drawTrace(rng: Rng, plan: Plan, schedule: Schedule, load: Load): Trace {
  const n = Math.round(plan.durationS * TRACE_HZ);
  const { currentA, phase } = drawCurrent(rng.fork(1), plan, schedule, load, n);

  // arc law V = V0 + Ra·I + E·l: Ra 0.0237 ohm; E 0.7 V/mm in argon, 1.6 V/mm in CO2 (domain sheet
  // 4.2, memory)
  const resistance = rng.range(0.018, 0.03);
  const field = co2Percent(plan.setup.gas) > 30 ? 1.6 : 0.7;
  const arcMm = Math.max(2, (plan.meanV - 14) / (2 * field));
  // in a short: about 1 V + 10 mOhm, and leads of 5-15 mOhm (domain sheet 1.2, 4.2: 4.5 V at
  // 180-220 A)
  const bridgeOhm = 0.01 + rng.range(0.002, 0.013);
  const bridgeV = rng.range(0.6, 1.4);
  // own choice inside the domain sheet's 0.3-0.5 V for real spray fuzz; one distribution for all
  // modes
  const fuzzV = rng.logRange(0.1, 0.5);
  const overshootV = rng.range(1.5, 6);
  const overshootS = rng.range(0.0002, 0.0007);
  const sagV = rng.range(0.5, 2.5);
  const sagS = rng.range(0.0008, 0.003);
  // domain sheet 1.1: 0.2-1 V at a detachment; big drops step more
  const stepV = rng.range(0.12, 0.45);
  const stepS = Math.max(0.0006, schedule.cycleS * rng.range(0.25, 0.6));

  const swing = wander(rng, n, Math.min(90, Math.max(12, 1.5 / schedule.cycleS)), TRACE_HZ);
  const hand = wander(rng, n, 1.2, TRACE_HZ);
  const handMm = rng.range(0.05, 0.5);
  const step = new Float32Array(n);
  for (const d of schedule.drops) {
    const size = Math.min(1, Math.max(0.1, stepV * d.diameterMm ** 0.8 * rng.spread(0.3)));
    addStep(step, d.atS, size, stepS);
  }

  const voltageV = new Float32Array(n);
  const lengthRel = new Float32Array(n);
  const smooth = 1 - Math.exp(-1 / (TRACE_HZ * rng.range(0.00003, 0.00007)));
  let next = 0;
  let lastEnd = -1;
  let v = 0;
  let fuzz = 0;
  let arcSum = 0;
  let arcCount = 0;
  let sum = 0;
  const { shorts } = schedule;
  for (let i = 0; i < n; i++) {
    const t = i / TRACE_HZ;
    const amp = currentA[i] as number;
    while (next < shorts.length && t >= (shorts[next]?.endS ?? 0)) {
      lastEnd = shorts[next]?.endS ?? 0;
      next++;
    }
    const short = shorts[next];
    fuzz += 0.35 * (rng.fuzz() - fuzz);
    let target: number;
    if (phase[i] === 1) {
      // the bridge thins out in its last 0.2 ms and its resistance rises (own choice of size)
      const left = (short?.endS ?? t) - t;
      target = bridgeV + bridgeOhm * amp + 3 * Math.exp(-left / 0.00008) + 0.1 * fuzz;
    } else if (phase[i] === 2) target = 1.4 * plan.setup.setVoltageV;
    else {
      const off = arcMm * schedule.dance * (swing[i] as number) + handMm * (hand[i] as number);
      const length = Math.max(0.15, 1 + (off - (load(t) - 1) * arcMm) / arcMm);
      lengthRel[i] = length;
      target =
        plan.meanV +
        resistance * (amp - plan.meanA) +
        field * arcMm * (length - 1) +
        (step[i] as number) +
        fuzzV * 1.6 * fuzz;
      if (lastEnd >= 0) target += overshootV * Math.exp(-(t - lastEnd) / overshootS);
      if (short) target -= sagV * Math.exp(-(short.startS - t) / sagS);
    }
    v += smooth * (target - v);
    voltageV[i] = v;
    if (t > schedule.settledS && t < plan.durationS - 0.03) {
      sum += v;
      arcCount++;
      if (phase[i] === 0) arcSum++;
    }
  }
  // the arc alone is moved, the bridges keep their volts
  const shift = ((plan.meanV - sum / Math.max(1, arcCount)) * arcCount) / Math.max(1, arcSum);
  for (let i = 0; i < n; i++) {
    if (phase[i] === 0) voltageV[i] = Math.max(9.5, (voltageV[i] as number) + shift);
  }
  endArc(currentA, voltageV, lengthRel);
  return { currentA, voltageV, lengthRel };
}

/**
 * A short rise just before a detachment, a step at it and its decay as the next drop grows (domain
 * sheet 1.1).
 */
function addStep(out: Float32Array, atS: number, volts: number, decayS: number): void {
  const at = Math.round(atS * TRACE_HZ);
  for (let k = -10; k < 0; k++) {
    const i = at + k;
    if (i >= 0 && i < out.length) out[i] = (out[i] as number) + volts * (0.6 * (1 + k / 10));
  }
  const keep = Math.exp(-1 / (TRACE_HZ * decayS));
  let size = volts;
  const to = Math.min(out.length, at + Math.ceil(3 * decayS * TRACE_HZ));
  for (let i = Math.max(0, at); i < to; i++) {
    out[i] = (out[i] as number) + size;
    size *= keep;
  }
}

/** Burn-off: in the last 25 ms the source is shut and the arc dies. */
function endArc(currentA: Float32Array, voltageV: Float32Array, lengthRel: Float32Array): void {
  const n = currentA.length;
  const from = Math.max(0, n - Math.round(0.025 * TRACE_HZ));
  for (let i = from; i < n; i++) {
    const f = (n - i) / (n - from);
    currentA[i] = (currentA[i] as number) * f;
    voltageV[i] = (voltageV[i] as number) * (f > 0.15 ? 1 : f / 0.15);
    if (f < 0.15) lengthRel[i] = 0;
  }
}
