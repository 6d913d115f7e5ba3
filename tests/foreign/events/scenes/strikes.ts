import { mix, white } from '../filters.js';
import { level, type Scene, shape, strike } from './kit.js';

/** Hammer on steel: one to six blows a second, each with a few ringing tones. */
export const hammering: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const tones = Array.from({ length: 5 }, () => rng.logRange(400, 7000));
  const everyS = rng.range(0.16, 0.9);
  let at = rng.range(0, everyS) * rateHz;
  while (at < n) {
    const size = rng.spread(0.4);
    for (const hz of tones) {
      const decayS = rng.logRange(0.01, 0.12);
      strike(rng, out, rateHz, Math.floor(at), { hz, decayS, noise: 0, size: size * rng.next() });
    }
    strike(rng, out, rateHz, Math.floor(at), { hz: 1, decayS: 0.003, noise: 1, size: 2 * size });
    at += everyS * rateHz * rng.spread(0.15);
  }
  return level(mix(out, white(rng, n), 0, 0.003));
};

/** Fire: rare sharp cracks in clusters over a soft roar. */
export const fire: Scene = (rng, n, rateHz) => {
  const out = shape(white(rng, n), rateHz, 'lowpass', rng.logRange(200, 900));
  const perS = rng.logRange(3, 60);
  let at = 0;
  while (at < n) {
    at += (-Math.log(1 - rng.next()) / perS) * rateHz;
    const more = rng.chance(0.3) ? rng.int(1, 6) : 0;
    for (let k = 0; k <= more; k++) {
      const sound = {
        hz: rng.logRange(800, 8000),
        decayS: rng.logRange(0.0003, 0.003),
        noise: 0.7,
      };
      const place = Math.floor(at + k * rng.range(0.001, 0.02) * rateHz);
      strike(rng, out, rateHz, place, { ...sound, size: 3 * rng.spread(1.5) });
    }
  }
  return level(out);
};

/** Loose electrical or record crackle: Poisson clicks of one shape, hundreds a second at most. */
export const crackle: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const clicks = Math.round((n / rateHz) * rng.logRange(15, 500));
  const sound = { hz: rng.logRange(600, 5000), decayS: rng.logRange(0.0003, 0.002), noise: 0.4 };
  for (let k = 0; k < clicks; k++) {
    strike(rng, out, rateHz, rng.int(0, n - 1), { ...sound, size: rng.spread(0.7) });
  }
  return level(mix(level(out), white(rng, n), 0, rng.range(0.01, 0.3)));
};

/** Applause: many hands, each with its own beat. */
export const applause: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const hands = rng.int(6, 45);
  for (let h = 0; h < hands; h++) {
    const everyS = rng.range(0.18, 0.35);
    const sound = { hz: rng.logRange(700, 2500), decayS: rng.logRange(0.002, 0.008), noise: 0.8 };
    const size = rng.spread(0.6);
    for (let t = rng.range(0, everyS); t < n / rateHz; t += everyS * rng.spread(0.08)) {
      strike(rng, out, rateHz, Math.floor(t * rateHz), { ...sound, size });
    }
  }
  return level(out);
};

export const clock: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const everyS = rng.pick([0.2, 0.25, 0.5, 1]);
  const sound = { hz: rng.logRange(1500, 5000), decayS: rng.logRange(0.001, 0.006), noise: 0.3 };
  for (let t = 0.05; t < n / rateHz; t += everyS) {
    strike(rng, out, rateHz, Math.floor(t * rateHz), { ...sound, size: rng.spread(0.1) });
  }
  return level(mix(level(out), white(rng, n), 0, rng.range(0.01, 0.1)));
};

/** Gravel or hail on a sheet: dense strokes with a common ring, in gusts. */
export const hail: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const perS = rng.logRange(40, 400);
  let at = 0;
  let gust = 1;
  while (at < n) {
    gust += 0.1 * (rng.spread(0.8) - gust);
    at += (-Math.log(1 - rng.next()) / (perS * Math.max(0.1, gust))) * rateHz;
    const sound = { hz: rng.logRange(900, 6000), decayS: rng.logRange(0.001, 0.01), noise: 0.3 };
    strike(rng, out, rateHz, Math.floor(at), { ...sound, size: rng.spread(1) });
  }
  return level(mix(level(out), white(rng, n), 0, 0.05));
};
