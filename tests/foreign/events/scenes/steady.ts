import { mix, wander, white } from '../filters.js';
import { fallOff, harmonics, level, type Scene, shape, strike } from './kit.js';

/** Digital silence, or the faint noise of a converter. */
export const silence: Scene = (rng, n) => {
  const x = new Float32Array(n);
  if (rng.chance(0.5)) for (let i = 0; i < n; i++) x[i] = 1e-4 * rng.fuzz();
  return x;
};

export const whiteHiss: Scene = (rng, n) => white(rng, n);

/** Pink noise as a sum of five one-pole noises an octave and more apart. */
export const pinkHiss: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  for (let k = 0; k < 5; k++) {
    const hz = 60 * 4 ** k;
    const part = level(shape(white(rng, n), rateHz, 'lowpass', hz, 0.5));
    mix(out, part);
  }
  return level(out);
};

/** Shielding gas from the nozzle: band of noise with a weak whistle, no arc. */
export const gasFlow: Scene = (rng, n, rateHz) => {
  const x = shape(white(rng, n), rateHz, 'bandpass', rng.logRange(1500, 7000), rng.range(0.3, 1));
  if (rng.chance(0.3)) harmonics(x, rateHz, () => 2900 + 40 * rng.normal(), [0.05]);
  return level(x);
};

/** Air that leaks from a hose: bright noise, slowly changing. */
export const airLeak: Scene = (rng, n, rateHz) => {
  const x = shape(white(rng, n), rateHz, 'highpass', rng.logRange(800, 3500));
  const slow = wander(rng, n, 2, rateHz);
  for (let i = 0; i < n; i++) x[i] = (x[i] as number) * (1 + 0.15 * (slow[i] as number));
  return level(x);
};

/** Rain: a bed and many small splashes. */
export const rain: Scene = (rng, n, rateHz) => {
  const out = shape(white(rng, n), rateHz, 'bandpass', rng.logRange(1200, 5000), 0.4);
  const drops = Math.round((n / rateHz) * rng.logRange(30, 900));
  const size = rng.range(0.5, 3);
  for (let k = 0; k < drops; k++) {
    const hz = rng.logRange(900, 6000);
    const sound = { hz, decayS: rng.logRange(0.0006, 0.005), noise: rng.range(0.3, 1), size };
    strike(rng, out, rateHz, rng.int(0, n - 1), { ...sound, size: size * rng.spread(0.8) });
  }
  return level(out);
};

/** Fan or extractor: rumble with blade tones. */
export const fan: Scene = (rng, n, rateHz) => {
  const out = level(shape(white(rng, n), rateHz, 'lowpass', rng.logRange(300, 2500)));
  const hz = rng.logRange(24, 320);
  const tone = level(harmonics(new Float32Array(n), rateHz, () => hz, fallOff(rng, 6, 1)));
  return level(mix(out, tone, 0, rng.range(0.1, 1)));
};

export const waves: Scene = (rng, n, rateHz) => {
  const x = shape(white(rng, n), rateHz, 'lowpass', rng.logRange(600, 2500), 0.5);
  const slow = wander(rng, n, 0.3, rateHz);
  for (let i = 0; i < n; i++) x[i] = (x[i] as number) * Math.exp(0.7 * (slow[i] as number));
  return level(x);
};

/** Road or yard: deep rumble that comes and goes. */
export const traffic: Scene = (rng, n, rateHz) => {
  const x = shape(white(rng, n), rateHz, 'lowpass', rng.logRange(120, 700), 0.6);
  mix(x, white(rng, n), 0, 0.01);
  const slow = wander(rng, n, 0.4, rateHz);
  for (let i = 0; i < n; i++) x[i] = (x[i] as number) * Math.exp(0.4 * (slow[i] as number));
  return level(x);
};

/**
 * Fat in a pan: bright noise and dense small pops; close to what listeners call the sound of dip
 * transfer.
 */
export const frying: Scene = (rng, n, rateHz) => {
  const out = shape(white(rng, n), rateHz, 'highpass', rng.logRange(1000, 4000), 0.5);
  const pops = Math.round((n / rateHz) * rng.logRange(20, 250));
  for (let k = 0; k < pops; k++) {
    const size = 4 * rng.spread(1);
    const sound = { hz: rng.logRange(700, 5000), decayS: rng.logRange(0.0005, 0.003), noise: 0.6 };
    strike(rng, out, rateHz, rng.int(0, n - 1), { ...sound, size });
  }
  return level(out);
};
