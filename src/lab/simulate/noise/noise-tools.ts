import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';

/** A sound source that is not our arc, rms about 1 where it sounds. */
export type NoiseMaker = (random: Random, rateHz: number, count: number) => Float64Array;

/** Root of the mean square; 0 for nothing. */
export function rms(samples: Float64Array, from = 0, to = samples.length): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i]! * samples[i]!;
  return to > from ? Math.sqrt(sum / (to - from)) : 0;
}

/** Scales in place to rms 1; silence stays silent. */
export function normalised(samples: Float64Array): Float64Array {
  const level = rms(samples);
  if (level > 0) for (let i = 0; i < samples.length; i++) samples[i]! /= level;
  return samples;
}

export function addTo(target: Float64Array, extra: Float64Array, gain = 1): Float64Array {
  for (let i = 0; i < target.length; i++) target[i]! += gain * (extra[i] ?? 0);
  return target;
}

/** White noise through a wide band-pass and a gentle low-pass; rms 1. */
export function colouredNoise(
  random: Random,
  rateHz: number,
  count: number,
  hz: number,
  q: number,
): Float64Array {
  const band = section('band', rateHz, hz, q);
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) out[i] = band.next(roughNormal(random));
  return normalised(out);
}

/** Noise that falls by about 3 dB an octave, as of air and distant traffic; rms 1. */
export function pinkNoise(random: Random, rateHz: number, count: number): Float64Array {
  const out = new Float64Array(count);
  const poles = [20, 160, 1200, 8000].map((hz) => Math.exp((-2 * Math.PI * hz) / rateHz));
  const gains = poles.map((pole) => Math.sqrt(1 - pole * pole));
  const states = new Float64Array(poles.length);
  for (let i = 0; i < count; i++) {
    const white = roughNormal(random);
    let sum = 0;
    for (let k = 0; k < poles.length; k++) {
      states[k] = poles[k]! * states[k]! + gains[k]! * white;
      sum += states[k]!;
    }
    out[i] = sum;
  }
  return normalised(out);
}

/** Slow random walk about 0 with unit deviation and this corner, one value a sample. */
export function drift(random: Random, rateHz: number, count: number, hz: number): Float64Array {
  const every = Math.max(1, Math.floor(rateHz / (40 * hz)));
  const step = Math.min(0.5, (2 * Math.PI * hz * every) / rateHz);
  const gain = Math.sqrt(2 * step);
  const out = new Float64Array(count);
  let value = random.normal();
  let target = value;
  for (let i = 0; i < count; i++) {
    if (i % every === 0) {
      value = target;
      target = value * (1 - step) + gain * random.normal();
    }
    out[i] = value + ((target - value) * (i % every)) / every;
  }
  return out;
}

/** Sum of harmonics with given amplitudes of a speed that may vary (Hz per sample). */
export function harmonics(
  rateHz: number,
  speedHz: Float64Array,
  amplitudes: readonly number[],
): Float64Array {
  let fastest = 0;
  for (const hz of speedHz) if (hz > fastest) fastest = hz;
  const size = 4096;
  const table = new Float64Array(size + 1);
  for (let k = 1; k <= amplitudes.length && k * fastest < 0.45 * rateHz; k++) {
    const amplitude = amplitudes[k - 1]!;
    for (let i = 0; i <= size; i++) {
      table[i]! += amplitude * Math.sin((2 * Math.PI * k * i) / size + 1.3 * (k - 1) ** 2);
    }
  }
  const out = new Float64Array(speedHz.length);
  let turn = 0;
  for (let i = 0; i < out.length; i++) {
    turn += speedHz[i]! / rateHz;
    if (turn >= 1) turn -= Math.floor(turn);
    const at = turn * size;
    const k = Math.floor(at);
    out[i] = table[k]! + (at - k) * (table[k + 1]! - table[k]!);
  }
  return out;
}

/** A decaying burst of noise or of a tone added at a place. */
export function addBurst(
  out: Float64Array,
  rateHz: number,
  start: number,
  burst: { peak: number; decayS: number; toneHz?: number },
  random: Random,
): void {
  const decay = Math.exp(-1 / (burst.decayS * rateHz));
  const end = Math.min(out.length, start + Math.ceil(7 * burst.decayS * rateHz));
  const turn = burst.toneHz === undefined ? 0 : (2 * Math.PI * burst.toneHz) / rateHz;
  let level = burst.peak;
  for (let i = Math.max(0, start), k = 0; i < end; i++, k++) {
    out[i]! += level * (turn > 0 ? Math.sin(turn * k) : 2 * random.next() - 1);
    level *= decay;
  }
}

/** Calls `at` for every event of a Poisson process. */
export function poisson(
  random: Random,
  rateHz: number,
  count: number,
  perSecond: number,
  at: (index: number) => void,
): void {
  let t = 0;
  for (;;) {
    t -= Math.log(1 - random.next()) / perSecond;
    const index = Math.floor(t * rateHz);
    if (index >= count) return;
    at(index);
  }
}

/**
 * Something switched: level from 0 to 1, and the samples at which it was switched. Times are mean lengths of on
 * and off, and the times of rise and fall, s.
 */
export function triggered(
  random: Random,
  rateHz: number,
  count: number,
  times: { onS: number; offS: number; riseS: number; fallS: number },
): { level: Float64Array; edges: number[] } {
  const level = new Float64Array(count);
  const edges: number[] = [];
  let on = random.next() < 0.4;
  let now = on ? 1 : 0;
  let left = 0;
  for (let i = 0; i < count; i++) {
    if (left-- <= 0) {
      if (i > 0) on = !on;
      const lastsS = (on ? times.onS : times.offS) * random.uniform(0.5, 1.5);
      // Never so long off that nothing is heard at all.
      left = Math.min(Math.ceil(lastsS * rateHz), on ? count : Math.floor(0.4 * count));
      if (i > 0) edges.push(i);
    }
    const step = 1 / ((on ? times.riseS : times.fallS) * rateHz);
    now = Math.max(0, Math.min(1, now + (on ? step : -step)));
    level[i] = now;
  }
  return { level, edges };
}

/** Envelope of an event train: raised where `on` says so, with soft edges. */
export function gate(
  random: Random,
  rateHz: number,
  count: number,
  meanOnS: number,
  meanOffS: number,
): Float64Array {
  const out = new Float64Array(count);
  let on = random.next() < 0.5;
  let left = 0;
  let level = on ? 1 : 0;
  const soft = 1 / (0.02 * rateHz);
  for (let i = 0; i < count; i++) {
    if (left-- <= 0) {
      on = !on;
      left = Math.ceil(-Math.log(1 - random.next()) * (on ? meanOnS : meanOffS) * rateHz);
    }
    level += ((on ? 1 : 0) - level) * soft;
    out[i] = level;
  }
  return out;
}
