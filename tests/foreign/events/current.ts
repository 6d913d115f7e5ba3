import type { Plan } from './plan.js';
import type { Rng } from './rng.js';
import type { Load, Pulse, Schedule } from './schedule.js';

/** Samples a second of the arc's own trace. */
export const TRACE_HZ = 40000;

/** Current of an arc, A, and what stands between wire and pool: 0 arc, 1 bridge, 2 nothing. */
export interface Current {
  currentA: Float32Array;
  phase: Uint8Array;
}

/** Current that a pulsed source asks for at time `t`; raised-cosine edges. */
function pulseA(p: Pulse, t: number): number {
  const u = t - p.atS;
  const top = p.riseS + p.holdS;
  if (u < 0 || u > top + p.fallS) return p.backA;
  const edge = u < p.riseS ? u / p.riseS : u > top ? 1 - (u - top) / p.fallS : 1;
  return p.backA + (p.peakA - p.backA) * (0.5 - 0.5 * Math.cos(Math.PI * edge));
}

/**
 * Draws the current: exponential rise in a bridge and fall after it, levels of the source, ripple
 * of the mains.
 */
export function drawCurrent(
  rng: Rng,
  plan: Plan,
  schedule: Schedule,
  load: Load,
  n: number,
): Current {
  const { shorts, pulses, gaps, steps } = schedule;
  const currentA = new Float32Array(n);
  const phase = new Uint8Array(n);
  const dt = 1 / TRACE_HZ;
  const pulsed = pulses.length > 0;
  const baseA = plan.mode === 'short-circuit' && !steps ? 0.72 * plan.meanA : plan.meanA;
  // 40-120 A/ms at contact (domain sheet 4.2: 67 A/ms computed), towards a limit of 2.5-4 x mean
  // (own choice)
  const limitA = Math.min(620, Math.max(260, plan.meanA * rng.range(2.5, 4)));
  const riseS = (limitA - baseA) / (rng.range(40, 120) * 1000);
  const fallS = rng.range(0.0012, 0.0045);
  const quick = 1 - Math.exp(-dt / rng.range(0.00008, 0.0002));
  const rise = 1 - Math.exp(-dt / riseS);
  const fall = 1 - Math.exp(-dt / fallS);
  // ripple (domain sheet 8: 100/120, 300/360 Hz): the same odds and sizes for all modes, own choice
  const rippleHz = rng.pick([100, 120, 300, 360, 300]);
  const ripple = rng.chance(0.4) ? rng.logRange(0.002, 0.03) : 0;
  const fuzz = rng.logRange(0.002, 0.012);

  let s = 0;
  let p = -1;
  let g = 0;
  let lastEnd = 0;
  let a = 0;
  for (let i = 0; i < n; i++) {
    const t = i * dt;
    while (s < shorts.length && t >= (shorts[s]?.endS ?? 0)) {
      lastEnd = shorts[s]?.endS ?? 0;
      s++;
    }
    while (p + 1 < pulses.length && t >= (pulses[p + 1]?.atS ?? 0)) p++;
    while (g < gaps.length && t >= (gaps[g]?.endS ?? 0)) g++;
    const short = shorts[s];
    const gap = gaps[g];
    if (t < 0.0004 || (gap && t >= gap.startS)) {
      phase[i] = 2;
      a += quick * (0 - a);
    } else if (short && t >= short.startS) {
      phase[i] = 1;
      if (steps && t > schedule.settledS) {
        // dwell low after contact, ramp, cut back when the bridge thins
        const u = t - short.startS;
        const left = short.endS - t;
        if (u < 0.0004) a += quick * (steps.backA * 0.8 - a);
        else if (left < 0.0003 && short.heavy) a += 2 * quick * (steps.cutA - a) * 0.5;
        else a += rise * (limitA - a);
      } else a += rise * (limitA - a);
    } else if (pulsed && t > schedule.settledS) {
      const pulse = pulses[Math.max(0, p)] as Pulse;
      const want = pulseA(pulse, t) * (0.6 + 0.4 * load(t));
      // the source follows its own edges; a rest of short current dies away
      a = t - lastEnd < 0.004 ? a + 2 * fall * (want - a) : want;
    } else if (steps && t > schedule.settledS) {
      const boosted = t - lastEnd < steps.boostS;
      a += quick * ((boosted ? steps.boostA : steps.backA) * load(t) - a);
    } else a += fall * (baseA * load(t) - a);
    const wave = 1 + ripple * Math.sin(2 * Math.PI * rippleHz * t) + fuzz * rng.fuzz();
    currentA[i] = a * wave;
  }
  toMean(currentA, phase, plan, schedule);
  return { currentA, phase };
}

/** Brings the mean of the settled arc to the plan. */
function toMean(currentA: Float32Array, phase: Uint8Array, plan: Plan, schedule: Schedule): void {
  const from = Math.round(schedule.settledS * TRACE_HZ);
  const to = currentA.length - Math.round(0.03 * TRACE_HZ);
  let sum = 0;
  for (let i = from; i < to; i++) sum += currentA[i] as number;
  const gain = plan.meanA / Math.max(1, sum / Math.max(1, to - from));
  for (let i = 0; i < currentA.length; i++) {
    currentA[i] = phase[i] === 2 ? 0 : (currentA[i] as number) * gain;
  }
}
