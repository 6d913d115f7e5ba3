import type { Rng } from '../rng.js';
import type { Scene } from './kit.js';
import * as machines from './machines.js';
import * as steady from './steady.js';
import * as strikes from './strikes.js';
import * as voices from './voices.js';

/** All sounds without an arc by name. */
export const SCENES: readonly (readonly [string, Scene])[] = [
  ['silence', steady.silence],
  ['white-hiss', steady.whiteHiss],
  ['rain', steady.rain],
  ['grinder', machines.grinder],
  ['speech', voices.babble],
  ['hum', machines.hum],
  ['fire', strikes.fire],
  ['air-tool', machines.airTool],
  ['music', voices.music],
  ['pink-hiss', steady.pinkHiss],
  ['engine', machines.engine],
  ['hammering', strikes.hammering],
  ['gas-flow', steady.gasFlow],
  ['needle-scaler', machines.needleScaler],
  ['tones', voices.tones],
  ['saw', machines.saw],
  ['crackle', strikes.crackle],
  ['fan', steady.fan],
  ['applause', strikes.applause],
  ['compressor', machines.compressor],
  ['frying', steady.frying],
  ['air-leak', steady.airLeak],
  ['drill', machines.drill],
  ['hail', strikes.hail],
  ['waves', steady.waves],
  ['traffic', steady.traffic],
  ['clock', strikes.clock],
  ['helicopter', machines.helicopter],
  ['siren', voices.siren],
];

/** Background of a workshop: one to three of these at once. */
const SHOP: readonly Scene[] = [
  machines.grinder,
  steady.fan,
  machines.compressor,
  voices.babble,
  strikes.hammering,
  steady.traffic,
  steady.airLeak,
  voices.music,
  machines.hum,
  machines.engine,
  machines.saw,
  machines.airTool,
  steady.pinkHiss,
];

/** Draws a workshop background of about unit level. */
export const shopNoise: Scene = (rng: Rng, n: number, rateHz: number) => {
  const out = new Float32Array(n);
  const count = rng.int(1, 3);
  for (let k = 0; k < count; k++) {
    const part = rng.pick(SHOP)(rng, n, rateHz);
    const gain = k === 0 ? 1 : rng.logRange(0.15, 1);
    for (let i = 0; i < n; i++) out[i] = (out[i] as number) + gain * (part[i] as number);
  }
  return out;
};
