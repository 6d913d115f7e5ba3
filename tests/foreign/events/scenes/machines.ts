import { mix, wander, white } from '../filters.js';
import type { Rng } from '../rng.js';
import { fallOff, harmonics, level, type Scene, shape, strike } from './kit.js';

/** Speed that sags and recovers: base frequency and how far it wanders. */
function speed(rng: Rng, n: number, rateHz: number, baseHz: number, depth: number) {
  const slow = wander(rng, n, 1.5, rateHz);
  return (t: number) =>
    baseHz * (1 + depth * (slow[Math.min(n - 1, Math.floor(t * rateHz))] as number));
}

/** Mains hum of transformers: 50 or 60 Hz and its harmonics. */
export const hum: Scene = (rng, n, rateHz) => {
  const hz = rng.pick([50, 60]);
  const x = harmonics(new Float32Array(n), rateHz, () => hz, fallOff(rng, 12, rng.range(0.3, 1.2)));
  return level(mix(level(x), white(rng, n), 0, rng.range(0.005, 0.1)));
};

/**
 * Angle grinder: shaft near 183 Hz (domain sheet 8: 11 000 a minute), broad noise that the shaft
 * modulates.
 */
export const grinder: Scene = (rng, n, rateHz) => {
  const run = speed(rng, n, rateHz, rng.range(120, 200), 0.04);
  const tone = level(harmonics(new Float32Array(n), rateHz, run, fallOff(rng, 25, 0.5)));
  const noise = level(shape(white(rng, n), rateHz, 'highpass', rng.logRange(900, 3500), 0.5));
  const depth = rng.range(0, 0.5);
  for (let i = 0; i < n; i++) noise[i] = (noise[i] as number) * (1 + depth * (tone[i] as number));
  return level(mix(tone, noise, 0, rng.logRange(0.5, 3)));
};

/** Circular or band saw: tooth tone and scraping. */
export const saw: Scene = (rng, n, rateHz) => {
  const run = speed(rng, n, rateHz, rng.logRange(300, 1600), 0.03);
  const tone = level(harmonics(new Float32Array(n), rateHz, run, fallOff(rng, 10, 0.7)));
  const noise = level(shape(white(rng, n), rateHz, 'bandpass', rng.logRange(1500, 6000), 0.5));
  return level(mix(tone, noise, 0, rng.logRange(0.3, 2)));
};

/** A stroke every `hz(t)`: the common part of engines, hammers of air and needles. */
function strokes(
  rng: Rng,
  n: number,
  rateHz: number,
  hz: number,
  jitter: number,
  sound: { hz: number; decayS: number; noise: number },
): Float32Array {
  const out = new Float32Array(n);
  let at = 0;
  while (at < n) {
    strike(rng, out, rateHz, Math.floor(at), { ...sound, size: rng.spread(0.2) });
    at += (rateHz / hz) * Math.max(0.2, 1 + jitter * rng.normal());
  }
  return out;
}

export const engine: Scene = (rng, n, rateHz) => {
  const sound = { hz: rng.logRange(60, 300), decayS: rng.logRange(0.004, 0.02), noise: 0.4 };
  const x = level(strokes(rng, n, rateHz, rng.logRange(18, 130), 0.02, sound));
  return level(mix(x, shape(white(rng, n), rateHz, 'lowpass', 2500), 0, rng.range(0.05, 0.4)));
};

export const compressor: Scene = (rng, n, rateHz) => {
  const sound = { hz: rng.logRange(90, 400), decayS: rng.logRange(0.005, 0.03), noise: 0.6 };
  const x = level(strokes(rng, n, rateHz, rng.range(12, 50), 0.01, sound));
  return level(mix(x, shape(white(rng, n), rateHz, 'bandpass', 1200, 0.4), 0, rng.range(0.1, 0.8)));
};

/** Air chisel or impact wrench: 20-60 hard strokes a second over exhaust air. */
export const airTool: Scene = (rng, n, rateHz) => {
  const sound = { hz: rng.logRange(800, 4000), decayS: rng.logRange(0.002, 0.01), noise: 0.7 };
  const x = level(strokes(rng, n, rateHz, rng.range(18, 65), rng.range(0.01, 0.1), sound));
  return level(mix(x, shape(white(rng, n), rateHz, 'highpass', 1200), 0, rng.range(0.2, 0.9)));
};

/** Needle scaler: many needles, 60-130 loose strokes a second; close to an arc in rate and band. */
export const needleScaler: Scene = (rng, n, rateHz) => {
  const sound = { hz: rng.logRange(1500, 6000), decayS: rng.logRange(0.0008, 0.004), noise: 0.7 };
  const hz = rng.range(45, 130);
  const x = strokes(rng, n, rateHz, hz, rng.range(0.03, 0.3), sound);
  mix(x, strokes(rng, n, rateHz, hz * 1.01, 0.25, { ...sound, hz: sound.hz * 1.3 }), 0, 0.6);
  return level(mix(level(x), white(rng, n), 0, rng.range(0.05, 0.4)));
};

export const drill: Scene = (rng, n, rateHz) => {
  const run = speed(rng, n, rateHz, rng.logRange(40, 250), 0.06);
  const tone = level(harmonics(new Float32Array(n), rateHz, run, fallOff(rng, 30, 0.4)));
  return level(mix(tone, shape(white(rng, n), rateHz, 'bandpass', 3000, 0.5), 0, 0.4));
};

export const helicopter: Scene = (rng, n, rateHz) => {
  const sound = { hz: rng.range(50, 140), decayS: rng.range(0.008, 0.03), noise: 0.5 };
  const x = level(strokes(rng, n, rateHz, rng.range(11, 28), 0.01, sound));
  return level(mix(x, shape(white(rng, n), rateHz, 'lowpass', 1800), 0, 0.5));
};
