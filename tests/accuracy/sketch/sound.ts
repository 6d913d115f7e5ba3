import type { Mode, Random } from '../../../src/core/index.js';

/**
 * A second, independent picture of arc sound, drawn from event statistics and loudness curves instead of
 * from circuit and melt. It shares no code and no formula with `src/lab/simulate` and is never fitted on:
 * it asks whether a model learned arcs or only its own simulator. All figures are invented within the
 * ranges that the trade describes (common practice, no source).
 */
export interface SketchedSound {
  samples: Float64Array;
  rateHz: number;
  arc: { startS: number; endS: number };
  /** Rate of the events that were laid down, per second. */
  eventRateHz: number;
}

export function sketchSound(mode: Mode, random: Random, rateHz = 44_100): SketchedSound {
  const startS = random.uniform(0.4, 1.2);
  const endS = startS + random.uniform(3.5, 6);
  const count = Math.round((endS + random.uniform(0.4, 1)) * rateHz);
  const loudness = new Float64Array(count);
  const clicks = new Float64Array(count);
  const from = Math.round(startS * rateHz);
  const to = Math.round(endS * rateHz);
  const eventRateHz = LAYERS[mode](loudness, clicks, from, to, rateHz, random);
  ignite(clicks, from, rateHz, random);
  const samples = colour(loudness, clicks, rateHz, random);
  const floor = 10 ** (random.uniform(-45, -28) / 20);
  const scale = random.uniform(0.02, 0.2) / rms(samples, from, to);
  for (let i = 0; i < count; i++)
    samples[i] = (samples[i]! + floor * random.normal() * 0.1) * scale;
  return { samples, rateHz, arc: { startS, endS }, eventRateHz };
}

type Layer = (
  loudness: Float64Array,
  clicks: Float64Array,
  from: number,
  to: number,
  rateHz: number,
  random: Random,
) => number;

const LAYERS: Record<Mode, Layer> = {
  'short-circuit': (loudness, clicks, from, to, rateHz, random) => {
    const rate = random.uniform(45, 190);
    const cv = random.uniform(0.05, 0.35);
    const crack = random.uniform(4, 14);
    loudness.fill(1, from, to);
    let events = 0;
    for (let at = from; at < to; events++) {
      const gap = Math.round(random.uniform(0.0008, 0.004) * rateHz);
      for (let i = at; i < Math.min(to, at + gap); i++) loudness[i] = 0.15;
      if (at + gap < to) clicks[at + gap] = crack * Math.exp(0.3 * random.normal());
      at += Math.max(
        gap + 5,
        Math.round((rateHz / rate) * Math.max(0.3, 1 + cv * random.normal())),
      );
    }
    return (events * rateHz) / (to - from);
  },
  globular: (loudness, clicks, from, to, rateHz, random) => {
    const rate = random.uniform(6, 35);
    const depth = random.uniform(0.35, 0.65);
    let growth = 0;
    let next = from;
    let period = rateHz / rate;
    for (let i = from; i < to; i++) {
      if (i >= next) {
        period = (rateHz / rate) * random.uniform(0.45, 1.6);
        next = i + Math.round(period);
        clicks[i] = random.uniform(1.5, 6);
        growth = 0;
        if (random.next() < 0.08) clicks[i] = random.uniform(8, 20);
      }
      growth += 1 / period;
      loudness[i] = 1 - depth + depth * Math.min(1.4, growth);
    }
    return rate;
  },
  spray: (loudness, clicks, from, to, rateHz, random) => {
    const rate = random.uniform(150, 500);
    const depth = random.uniform(0.04, 0.2);
    let phase = 0;
    for (let i = from; i < to; i++) {
      phase += ((2 * Math.PI * rate) / rateHz) * (1 + 1.5 * random.normal());
      loudness[i] = 1 + depth * Math.cos(phase);
      if (random.next() < 1 / rateHz) clicks[i] = random.uniform(1, 5);
    }
    return rate;
  },
  'pulsed-spray': (loudness, clicks, from, to, rateHz, random) => {
    const rate = random.uniform(45, 240);
    const duty = random.uniform(0.18, 0.42);
    const base = random.uniform(0.1, 0.45);
    const edge = random.uniform(0, 3);
    let wasHigh = false;
    for (let i = from; i < to; i++) {
      const high = ((i - from) * rate) / rateHz - Math.floor(((i - from) * rate) / rateHz) < duty;
      loudness[i] = high ? 1 : base;
      if (high !== wasHigh) clicks[i] = edge * random.uniform(0.8, 1.2);
      wasHigh = high;
    }
    return rate;
  },
};

/** A burst of cracks at the start. */
function ignite(clicks: Float64Array, from: number, rateHz: number, random: Random): void {
  for (let k = 0; k < 12; k++)
    clicks[from + Math.round(random.uniform(0, 0.12) * rateHz)] = random.uniform(3, 15);
}

/** Hiss through a tilted band; clicks as short dying noise. */
function colour(
  loudness: Float64Array,
  clicks: Float64Array,
  rateHz: number,
  random: Random,
): Float64Array {
  const out = new Float64Array(loudness.length);
  const low = 1 - Math.exp((-2 * Math.PI * random.uniform(3000, 9000)) / rateHz);
  const high = 1 - Math.exp((-2 * Math.PI * random.uniform(200, 900)) / rateHz);
  const decay = Math.exp(-1 / (random.uniform(0.0001, 0.0006) * rateHz));
  let burst = 0;
  let smooth = 0;
  let slow = 0;
  for (let i = 0; i < out.length; i++) {
    burst = burst * decay + clicks[i]!;
    const raw = random.normal() * (loudness[i]! + burst);
    smooth += low * (raw - smooth);
    slow += high * (smooth - slow);
    out[i] = smooth - slow;
  }
  return out;
}

function rms(samples: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i]! * samples[i]!;
  return Math.sqrt(sum / (to - from));
}
