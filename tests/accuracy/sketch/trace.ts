import type { Mode, Random } from '../../../src/core/index.js';

/**
 * A second, independent picture of arc voltage and current: states with drawn durations and levels,
 * no circuit. Never fitted on. Levels and times are invented within what the trade describes (common
 * practice, no source).
 */
export interface SketchedTrace {
  voltageV: Float64Array;
  currentA: Float64Array;
  rateHz: number;
  arc: { startS: number; endS: number };
  /** Shorts (or drops, or pulses) that were laid down, per second of arc. */
  eventRateHz: number;
}

export function sketchTrace(mode: Mode, random: Random, rateHz = 10_000): SketchedTrace {
  const startS = random.uniform(0.3, 0.8);
  const endS = startS + random.uniform(2.5, 5);
  const count = Math.round((endS + 0.5) * rateHz);
  const voltageV = new Float64Array(count).fill(random.pick([0, 62]));
  const currentA = new Float64Array(count);
  const from = Math.round(startS * rateHz);
  const to = Math.round(endS * rateHz);
  const events = LAYERS[mode](voltageV, currentA, from, to, rateHz, random);
  const noiseV = random.uniform(0.05, 0.35);
  for (let i = 0; i < count; i++) {
    voltageV[i] = voltageV[i]! + noiseV * random.normal();
    currentA[i] = currentA[i]! + random.normal();
  }
  return {
    voltageV,
    currentA,
    rateHz,
    arc: { startS, endS },
    eventRateHz: events / (endS - startS),
  };
}

/** A constant-voltage source gives more current as the arc shortens (common practice, no source). */
const SLOPE_OHM = 0.03;

type Layer = (
  voltageV: Float64Array,
  currentA: Float64Array,
  from: number,
  to: number,
  rateHz: number,
  random: Random,
) => number;

const LAYERS: Record<Mode, Layer> = {
  'short-circuit': (voltageV, currentA, from, to, rateHz, random) => {
    const rate = random.uniform(40, 170);
    const cv = random.uniform(0.08, 0.4);
    const arcV = random.uniform(16, 21);
    const baseA = random.uniform(60, 140);
    let events = 0;
    for (let at = from; at < to; ) {
      const cycle = (rateHz / rate) * Math.max(0.35, 1 + cv * random.normal());
      const short = Math.min(cycle * 0.6, random.uniform(0.0012, 0.0045) * rateHz);
      const peakA = baseA * random.uniform(1.8, 3);
      for (let i = 0; i < cycle && at + i < to; i++) {
        const inShort = i < short;
        const late = (i - short) / rateHz;
        currentA[at + i] = inShort
          ? baseA + ((peakA - baseA) * i) / short
          : baseA + (peakA - baseA) * Math.exp(-late / 0.0015);
        voltageV[at + i] = inShort
          ? 1.5 + 0.012 * currentA[at + i]!
          : arcV + 6 * Math.exp(-late / 0.0008) + 0.01 * (currentA[at + i]! - baseA);
      }
      events++;
      at += Math.max(2, Math.round(cycle));
    }
    return events;
  },
  globular: (voltageV, currentA, from, to, rateHz, random) => {
    const rate = random.uniform(5, 30);
    const swingV = random.uniform(0.8, 2.2);
    const arcV = random.uniform(23, 28);
    const meanA = random.uniform(140, 230);
    let events = 0;
    for (let at = from; at < to; events++) {
      const cycle = (rateHz / rate) * random.uniform(0.5, 1.5);
      const bridge = random.next() < 0.1 ? random.uniform(0.003, 0.007) * rateHz : 0;
      for (let i = 0; i < cycle && at + i < to; i++) {
        const grown = i / cycle;
        const shorted = i < bridge;
        voltageV[at + i] = shorted ? 3.5 : arcV + swingV * (0.5 - grown);
        currentA[at + i] = shorted
          ? meanA + 150 * (i / bridge)
          : meanA + (swingV / SLOPE_OHM) * (grown - 0.5);
      }
      at += Math.max(2, Math.round(cycle));
    }
    return events;
  },
  spray: (voltageV, currentA, from, to, rateHz, random) => {
    const rate = random.uniform(140, 450);
    const stepV = random.uniform(0.15, 0.6);
    const arcV = random.uniform(26, 32);
    const meanA = random.uniform(220, 330);
    let events = 0;
    for (let at = from; at < to; events++) {
      const cycle = (rateHz / rate) * Math.max(0.4, 1 + 0.18 * random.normal());
      for (let i = 0; i < cycle && at + i < to; i++) {
        voltageV[at + i] = arcV + stepV * (0.5 - i / cycle);
        currentA[at + i] = meanA + 4 * (i / cycle - 0.5);
      }
      at += Math.max(2, Math.round(cycle));
    }
    return events;
  },
  'pulsed-spray': (voltageV, currentA, from, to, rateHz, random) => {
    const rate = random.uniform(50, 220);
    const duty = random.uniform(0.18, 0.4);
    const peakA = random.uniform(360, 480);
    const baseA = random.uniform(40, 90);
    const slope = 1 / (random.uniform(0.0002, 0.0007) * rateHz);
    const restV = random.uniform(17, 21);
    let level = 0;
    for (let i = from; i < to; i++) {
      const phase = ((i - from) * rate) / rateHz;
      const target = phase - Math.floor(phase) < duty ? 1 : 0;
      level += Math.max(-slope, Math.min(slope, target - level));
      currentA[i] = baseA + (peakA - baseA) * level;
      voltageV[i] = restV + 0.028 * (currentA[i]! - baseA);
    }
    return ((to - from) / rateHz) * rate;
  },
};
