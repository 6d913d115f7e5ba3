import { addTo, filter, type Line, rms, scaleBy } from './filters.js';
import type { Gear } from './gear.js';
import type { Dice } from './random.js';

/** Sounds of a shop in which no arc burns. */
export const OTHERS = [
  'compressor',
  'grinder',
  'hammering',
  'gas purge',
  'talk',
  'rain on the roof',
  'fan',
  'air gun',
] as const;
export type OtherKind = (typeof OTHERS)[number];

function noise(length: number, dice: Dice): Line {
  const x = new Float32Array(length);
  // Even noise: the filters after it make it bell-shaped.
  for (let n = 0; n < length; n++) x[n] = 3.46 * (dice.unit() - 0.5);
  return x;
}

/** Harmonics of a slowly wandering rate, with strengths falling by `slope` a step. */
function hum(
  length: number,
  hz: number,
  slope: number,
  wander: number,
  rateHz: number,
  dice: Dice,
): Line {
  const x = new Float32Array(length);
  const turn = new Float32Array(2048);
  for (let k = 1; k <= 14; k++) {
    const gain = k ** -slope * dice.between(0.3, 1.4);
    const phase = dice.between(0, 2 * Math.PI);
    for (let n = 0; n < turn.length; n++) {
      turn[n] = (turn[n] ?? 0) + gain * Math.sin((2 * Math.PI * k * n) / turn.length + phase);
    }
  }
  let angle = 0;
  let bend = 0;
  for (let n = 0; n < length; n++) {
    bend += (wander * (2 * dice.unit() - 1)) / Math.sqrt(rateHz) - (bend * 0.5) / rateHz;
    angle += (2048 * hz * (1 + bend)) / rateHz;
    if (angle >= 2048) angle -= 2048;
    const k = Math.floor(angle);
    const low = turn[k] ?? 0;
    x[n] = low + (angle - k) * ((turn[(k + 1) & 2047] ?? 0) - low);
  }
  return x;
}

/** Opens and closes a sound: pauses of a talker, a tool that is pressed and lifted. */
function gate(x: Line, onS: number, offS: number, edgeS: number, rateHz: number, dice: Dice): Line {
  let level = 0;
  let wanted = dice.chance(0.6) ? 1 : 0;
  let left = Math.round(dice.scale(0.3, 2) * onS * rateHz);
  const keep = 1 / (edgeS * rateHz);
  for (let n = 0; n < x.length; n++) {
    if (left-- <= 0) {
      wanted = wanted > 0 ? 0 : dice.between(0.5, 1);
      left = Math.round(dice.scale(0.4, 2.2) * (wanted > 0 ? onS : offS) * rateHz);
    }
    level += keep * (wanted - level);
    x[n] = (x[n] ?? 0) * level;
  }
  return x;
}

function clangs(length: number, perS: number, rateHz: number, dice: Dice): Line {
  const x = new Float32Array(length);
  for (let at = dice.unit() / perS; at * rateHz < length; at += dice.scale(0.5, 2) / perS) {
    const n = Math.floor(at * rateHz);
    x[n] = (x[n] ?? 0) + dice.scale(0.3, 1.5) * 300;
  }
  const sum = new Float32Array(length);
  for (let k = 0; k < 5; k++) {
    const hz = dice.scale(300, 6000);
    addTo(sum, filter(Float32Array.from(x), 'band', hz, dice.between(20, 90), rateHz));
  }
  return sum;
}

/** One sound at level one (rms), before room and microphone. All recipes own choice. */
export function makeOther(
  kind: OtherKind,
  gear: Gear,
  length: number,
  rateHz: number,
  dice: Dice,
): Line {
  let x: Line;
  if (kind === 'compressor') {
    x = hum(length, gear.hum.hz, 0.7, 0.002, rateHz, dice);
    addTo(x, filter(noise(length, dice), 'band', 900, 0.5, rateHz), 0.6);
  } else if (kind === 'grinder') {
    // 115 mm discs turn at about 11,000 a minute: 183 Hz (common practice).
    x = hum(length, dice.between(150, 190), 0.4, 0.03, rateHz, dice);
    addTo(x, filter(noise(length, dice), 'band', 4200, 0.5, rateHz), 2.5);
    gate(x, 1.6, 0.8, 0.06, rateHz, dice);
  } else if (kind === 'hammering') x = clangs(length, dice.between(1, 3), rateHz, dice);
  else if (kind === 'gas purge')
    x = filter(noise(length, dice), 'band', dice.between(3e3, 8e3), 0.6, rateHz);
  else if (kind === 'talk') {
    x = hum(length, dice.between(95, 210), 0.5, 0.08, rateHz, dice);
    filter(x, 'bell', dice.between(400, 800), 3, rateHz, 12);
    filter(x, 'bell', dice.between(1100, 2400), 4, rateHz, 10);
    addTo(x, filter(noise(length, dice), 'high', 3500, 0.7, rateHz), 0.15);
    gate(x, 0.16, 0.1, 0.02, rateHz, dice);
  } else if (kind === 'rain on the roof') {
    x = filter(noise(length, dice), 'band', 2200, 0.4, rateHz);
    for (let n = 0; n < length; n++)
      if (dice.chance(250 / rateHz)) x[n] = (x[n] ?? 0) + 9 * dice.unit();
  } else if (kind === 'fan') {
    x = filter(noise(length, dice), 'low', dice.between(400, 1200), 0.6, rateHz);
    addTo(x, hum(length, dice.between(70, 140), 0.9, 0.001, rateHz, dice), 0.08);
  } else {
    x = filter(noise(length, dice), 'high', 2500, 0.7, rateHz);
    gate(x, 0.5, 0.7, 0.015, rateHz, dice);
  }
  return scaleBy(x, 1 / Math.max(1e-9, rms(x)));
}

/**
 * The background of a day: the shop's hum and fan, and one or two things that happen to go on.
 * Level one.
 */
export function dayNoise(gear: Gear, length: number, rateHz: number, dice: Dice): Line {
  const steady = Math.sqrt(gear.hum.share);
  const sum = makeOther('fan', gear, length, rateHz, dice);
  addTo(sum, makeOther('gas purge', gear, length, rateHz, dice), dice.between(0.05, 0.3));
  const guest = dice.pick([
    null,
    'talk',
    'grinder',
    'hammering',
    'rain on the roof',
    'air gun',
  ] as const);
  if (guest !== null)
    addTo(sum, makeOther(guest, gear, length, rateHz, dice), dice.scale(0.2, 1.2));
  scaleBy(sum, Math.sqrt(1 - gear.hum.share) / Math.max(1e-9, rms(sum)));
  return addTo(sum, makeOther('compressor', gear, length, rateHz, dice), steady);
}
