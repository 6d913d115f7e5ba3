import type { Rng } from './rng.js';

/**
 * A short circuit from contact to rupture; a heavy one carries metal over, a light one only
 * touches.
 */
export interface Short {
  startS: number;
  endS: number;
  heavy: boolean;
}

/** A drop that leaves freely; its volume is relative until the melt balance sets the diameter. */
export interface Drop {
  atS: number;
  diameterMm: number;
  volume: number;
}

/** A pulse of current: begins to rise at `atS`, falls after rise and hold. */
export interface Pulse {
  atS: number;
  riseS: number;
  holdS: number;
  fallS: number;
  peakA: number;
  backA: number;
}

/** How a source with controlled dip leads the current. */
export interface Steps {
  boostA: number;
  boostS: number;
  backA: number;
  /** Current that is left when the bridge breaks. */
  cutA: number;
}

/** All events of an arc in order of time, and what shapes the current between them. */
export interface Schedule {
  /** End of the ignition phase. */
  settledS: number;
  shorts: Short[];
  drops: Drop[];
  pulses: Pulse[];
  /** null where the source lets the current run freely. */
  steps: Steps | null;
  /** Stretches without any arc during a stumbling start. */
  gaps: { startS: number; endS: number }[];
  /** Typical time between transfers; sets how fast the arc length swings. */
  cycleS: number;
  /** Swing of the arc length between transfers as a share of it. */
  dance: number;
}

/** Slow change of the load (hand, joint, wire slip) around 1, read at any time. */
export type Load = (timeS: number) => number;

/**
 * Draws a load: four slow swings and, in one arc of four, a step. Sizes: own choice, the same for
 * all modes.
 */
export function drawLoad(rng: Rng, durationS: number): Load {
  const depth = rng.logRange(0.008, 0.07);
  const parts = Array.from({ length: 4 }, () => ({
    hz: rng.logRange(0.12, 3),
    phase: rng.range(0, 2 * Math.PI),
    size: depth * rng.range(0.3, 1),
  }));
  const stepAtS = rng.range(0.2, 0.8) * durationS;
  const step = rng.chance(0.25) ? rng.range(-0.12, 0.12) : 0;
  return (t) => {
    let x = 1;
    for (const p of parts) x += p.size * Math.sin(2 * Math.PI * p.hz * t + p.phase);
    return x + step / (1 + Math.exp(-(t - stepAtS) / 0.04));
  };
}

/**
 * Draws times between events: a mean of 1, a spread, a family of shapes and some memory of the
 * last one.
 */
export function drawRenewal(rng: Rng, cv: number): () => number {
  const shape = rng.pick(['gamma', 'lognormal', 'shifted'] as const);
  const memory = rng.range(-0.2, 0.35);
  let last = 0;
  return () => {
    let x: number;
    if (shape === 'gamma') x = rng.gamma(cv);
    else if (shape === 'lognormal') x = rng.spread(cv);
    else {
      // a dead time, then an exponential wait: mean 1, the same spread
      const wait = Math.min(cv, 0.95);
      x = 1 - wait - wait * Math.log(1 - rng.next());
    }
    const y = Math.max(0.05, x + memory * last);
    last = x - 1;
    return y;
  };
}

/**
 * An arc that has just been struck: the first contact and, at times, a stumbling start with
 * breaks.
 */
export function drawIgnition(rng: Rng): Pick<Schedule, 'settledS' | 'shorts' | 'gaps'> {
  const shorts: Short[] = [{ startS: 0.0004, endS: rng.logRange(0.001, 0.008), heavy: false }];
  const gaps: Schedule['gaps'] = [];
  let t = (shorts[0] as Short).endS;
  // own choice: one start in six is long (0.2 to 0.8 s), the others settle within 0.15 s
  const long = rng.chance(1 / 6);
  const settledS = long ? rng.range(0.2, 0.8) : rng.range(0.03, 0.15);
  const tries = long ? rng.int(3, 9) : rng.int(0, 2);
  for (let k = 0; k < tries; k++) {
    const next = t + rng.range(0.5, 1.5) * ((settledS - t) / (tries - k + 1));
    const endS = next + rng.logRange(0.001, 0.012);
    if (endS > settledS - 0.004) break;
    // an arc that went out is struck again by a contact
    if (rng.chance(0.35) && next - t > 0.02) {
      gaps.push({ startS: t + rng.range(0.3, 0.6) * (next - t), endS: next });
    }
    shorts.push({ startS: next, endS, heavy: false });
    t = endS;
  }
  return { settledS, shorts, gaps };
}
