import * as machines from './machines.js';
import type { Scene } from './scene.js';
import * as voices from './voices.js';
import * as weather from './weather.js';

/** All sounds without an arc, by name. */
export const SCENES: readonly (readonly [string, Scene])[] = [
  ['silence', voices.silence],
  ['hum', machines.hum],
  ['tones', voices.tones],
  ['white-hiss', weather.whiteHiss],
  ['pink-hiss', weather.pinkHiss],
  ['rain', weather.rain],
  ['speech', voices.speech],
  ['babble', voices.babble],
  ['grinder', machines.grinder],
  ['air-tool', machines.airTool],
  ['engine', machines.engine],
  ['chainsaw', machines.chainsaw],
  ['circular-saw', machines.circularSaw],
  ['hand-saw', machines.handSaw],
  ['hammering', voices.hammering],
  ['fire', weather.fire],
  ['frying', weather.frying],
  ['applause', weather.applause],
  ['music', voices.music],
  ['alarm', voices.alarm],
  ['compressor', machines.compressor],
  ['gas-flow', weather.gasFlow],
  ['needle-scaler', machines.needleScaler],
  ['fan', machines.fan],
  ['wind', weather.wind],
  ['water', weather.water],
  ['ticking', voices.ticking],
];

/** Background of a quiet room. */
export const ROOM_SCENES: readonly Scene[] = [
  weather.pinkHiss,
  machines.fan,
  machines.hum,
  weather.wind,
];

/** Background of a workshop. */
export const SHOP_SCENES: readonly Scene[] = [
  machines.grinder,
  machines.fan,
  machines.engine,
  machines.compressor,
  machines.airTool,
  machines.circularSaw,
  voices.babble,
  voices.speech,
  voices.hammering,
  voices.music,
  machines.hum,
  weather.rain,
];
