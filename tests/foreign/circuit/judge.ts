/** Names the mode by what the metal did. */
import type { ForeignMode } from '../world.js';
import type { ArcPlan } from './plan.js';
import type { Run } from './simulate.js';

export interface Verdict {
  /** null: between modes; such arcs are drawn again. */
  mode: ForeignMode | null;
  shortsPerS: number;
  dropsPerS: number;
  /** Volume-weighted typical diameter of free drops, mm; null where nearly all metal crosses by bridges. */
  dropDiameterMm: number | null;
  /** Share of the metal that crosses by bridges. */
  bridged: number;
  pulseHz: number | null;
  meanV: number;
  meanA: number;
}

function median(list: number[]): number {
  const s = [...list].sort((a, b) => a - b);
  return s.length === 0 ? 0 : (s[s.length >> 1] as number);
}

/** Judges a run from `fromS` on. Limits of the modes: published ranges, margins own choice. */
export function judge(plan: ArcPlan, run: Run, fromS: number): Verdict {
  const span = run.durationS - fromS - 0.03;
  const inside = (t: number): boolean => t >= fromS && t < run.durationS - 0.03;
  const shorts = run.shorts.filter((s) => inside(s.startS));
  const drops = run.drops.filter((s) => inside(s.timeS));
  const pulses = run.pulsesS.filter(inside);
  const byBridge = shorts.reduce((a, s) => a + s.volumeM3, 0);
  const byFlight = drops.reduce((a, s) => a + s.volumeM3, 0);
  const bridged = byBridge / Math.max(1e-15, byBridge + byFlight);
  const shortsPerS = shorts.length / span;
  const dropsPerS = drops.length / span;
  const sizes = drops.map((x) => 1e3 * Math.cbrt((6 * x.volumeM3) / Math.PI));
  const size = sizes.length > 0 ? median(sizes) : 0;
  const pulseHz = plan.source.kind === 'pulses' && pulses.length > 3 ? pulses.length / span : null;
  let sumV = 0;
  let sumA = 0;
  const from = Math.round((fromS / run.durationS) * run.voltageV.length);
  const to = run.voltageV.length - 1500;
  for (let k = from; k < to; k++) {
    sumV += run.voltageV[k] as number;
    sumA += run.currentA[k] as number;
  }
  const meanV = sumV / (to - from);
  const meanA = sumA / (to - from);
  const over = size / plan.setup.wireDiameterMm;
  const longest = shorts.reduce((a, s) => Math.max(a, s.endS - s.startS), 0);
  let mode: ForeignMode | null = null;
  if (longest > 0.04 || meanA < 25) mode = null;
  else if (plan.source.kind === 'pulses') {
    const perPulse = dropsPerS / (pulseHz ?? 1);
    if (perPulse > 0.75 && perPulse < 1.6 && bridged < 0.12 && over < 1.35) mode = 'pulsed-spray';
  } else if (bridged > 0.85 && shortsPerS > 18 && shortsPerS < 230) mode = 'short-circuit';
  else if (bridged < 0.55 && over > 1.12 && dropsPerS > 0.8 && dropsPerS < 95 && shortsPerS < 62) {
    mode = 'globular';
  } else if (bridged < 0.03 && shortsPerS < 3 && over < 1.08 && dropsPerS > 80) mode = 'spray';
  return {
    mode,
    shortsPerS,
    dropsPerS,
    dropDiameterMm: bridged > 0.97 || drops.length < 2 ? null : size,
    bridged,
    pulseHz,
    meanV,
    meanA,
  };
}
