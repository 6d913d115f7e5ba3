import type { Dice } from './dice.js';
import { Biquad, mix } from './filters.js';
import { pink, type Scene, strike, unit } from './scene.js';
import { SlowCurve } from './slow.js';

/** One talker: a buzzing source or breath through three moving resonances, in syllables. */
function talker(dice: Dice, length: number, rateHz: number): Float32Array {
  const out = new Float32Array(length);
  const pitch = dice.ratio(85, 260);
  const melody = new SlowCurve(dice, length / rateHz, 0.12, 0.4, 4);
  let at = Math.round(dice.between(0, 0.4) * rateHz);
  let place = 0;
  while (at < length) {
    const size = Math.round(dice.ratio(0.06, 0.3) * rateHz);
    const hiss = dice.chance(0.25);
    const formants = hiss
      ? [Biquad.band(dice.ratio(2500, 7000), rateHz, 1)]
      : [
          Biquad.band(dice.ratio(250, 850), rateHz, 6),
          Biquad.band(dice.ratio(800, 2400), rateHz, 8),
          Biquad.band(dice.ratio(2200, 3300), rateHz, 9),
        ];
    const loud = dice.around(1, 0.4);
    for (let k = 0; k < size && at + k < length; k++) {
      const env = Math.sin((Math.PI * k) / size) ** 0.6 * loud;
      place += (pitch * Math.exp(melody.at((at + k) / rateHz))) / rateHz;
      place -= Math.floor(place);
      const source = hiss ? 0.4 * dice.noise() : (0.5 - place) * 2 + 0.1 * dice.noise();
      let y = 0;
      for (let f = 0; f < formants.length; f++) y += (formants[f] as Biquad).step(source) / (f + 1);
      out[at + k] = (out[at + k] as number) + env * y;
    }
    at +=
      size +
      Math.round((dice.chance(0.2) ? dice.ratio(0.15, 0.7) : dice.ratio(0.01, 0.06)) * rateHz);
  }
  return out;
}

/** Someone talks. */
export const speech: Scene = (dice, length, rateHz) => unit(talker(dice, length, rateHz));

/** Several talk at once. */
export const babble: Scene = (dice, length, rateHz) => {
  const out = new Float32Array(length);
  const people = dice.whole(3, 5);
  for (let p = 0; p < people; p++) mix(out, talker(dice, length, rateHz), dice.around(1, 0.4));
  return unit(out);
};

/** A steady tone or two, or a dial tone. */
export const tones: Scene = (dice, length, rateHz) => {
  const out = new Float32Array(length);
  for (let p = dice.whole(1, 3); p > 0; p--) {
    const turn = (2 * Math.PI * dice.ratio(100, 5000)) / rateHz;
    for (let k = 0; k < length; k++) out[k] = (out[k] as number) + Math.sin(turn * k);
  }
  return unit(out);
};

/** Plucked notes in time, a few at once. */
export const music: Scene = (dice, length, rateHz) => {
  const out = new Float32Array(length);
  const beatS = 60 / dice.between(70, 170) / 2;
  const root = dice.ratio(90, 300);
  const steps = [0, 2, 4, 5, 7, 9, 11, 12, 14, 16];
  for (let t = 0; t < length / rateHz; t += beatS) {
    for (let v = dice.whole(0, 2); v >= 0; v--) {
      const hz = root * 2 ** (dice.pick(steps) / 12);
      const decayS = dice.ratio(0.08, 0.5);
      const parts = [1, 2, 3, 4, 5].map((p) => ({ hz: hz * p, decayS: decayS / p, gain: 1 / p }));
      strike(out, rateHz, t, dice.around(1, 0.3), parts, 0.002, dice);
    }
    if (dice.chance(0.5)) strike(out, rateHz, t, 2, [], dice.ratio(0.005, 0.05), dice);
  }
  return unit(out);
};

/** An alarm: beeps or a siren that sweeps. */
export const alarm: Scene = (dice, length, rateHz) => {
  const out = new Float32Array(length);
  const hz = dice.ratio(500, 3000);
  const rate = dice.between(1, 6);
  const sweeps = dice.chance(0.5);
  let place = 0;
  for (let k = 0; k < length; k++) {
    const turn = (k / rateHz) * rate;
    const part = turn - Math.floor(turn);
    place += (hz * (sweeps ? 1 + 0.5 * part : 1)) / rateHz;
    out[k] = sweeps || part < 0.5 ? Math.sign(Math.sin(2 * Math.PI * place)) : 0;
  }
  return unit(out);
};

/** A hammer on steel, a few blows a second. */
export const hammering: Scene = (dice, length, rateHz) => {
  const out = pink(dice, length);
  for (let k = 0; k < length; k++) out[k] = (out[k] as number) * 0.05;
  const parts = Array.from({ length: 6 }, () => ({
    hz: dice.ratio(300, 6000),
    decayS: dice.ratio(0.01, 0.3),
    gain: dice.ratio(0.1, 1),
  }));
  const rate = dice.ratio(1, 6);
  for (let t = dice.between(0, 1 / rate); t < length / rateHz; t += dice.wait(1 / rate, 0.2)) {
    strike(out, rateHz, t, dice.around(8, 0.3), parts, dice.ratio(0.001, 0.01), dice);
  }
  return unit(out);
};

/** A clock or relay that ticks evenly, slow or fast. */
export const ticking: Scene = (dice, length, rateHz) => {
  const out = pink(dice, length);
  for (let k = 0; k < length; k++) out[k] = (out[k] as number) * 0.03;
  const rate = dice.ratio(1, 60);
  const part = { hz: dice.ratio(1500, 6000), decayS: dice.ratio(0.001, 0.006), gain: 1 };
  for (let t = 0; t < length / rateHz; t += 1 / rate) {
    strike(out, rateHz, t, 5, [part], 0.0006, dice);
  }
  return unit(out);
};

/** Nothing at all. */
export const silence: Scene = (_dice, length) => new Float32Array(length);
