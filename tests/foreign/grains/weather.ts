import { drawJet } from './jet.js';
import { band, pink, type Scene, strike, unit, white } from './scene.js';
import { SlowCurve } from './slow.js';

/** Many drops on a roof or a puddle over a steady hiss. */
export const rain: Scene = (dice, length, rateHz) => {
  const out = band(dice, length, rateHz, dice.ratio(1500, 6000), 0.4);
  const rate = dice.ratio(30, 600);
  const heavy = dice.ratio(0.5, 3);
  for (let t = 0; t < length / rateHz; t += dice.wait(1 / rate, 1)) {
    const part = { hz: dice.ratio(800, 6000), decayS: dice.ratio(0.001, 0.005), gain: 1 };
    strike(out, rateHz, t, heavy * dice.around(1, 0.5), [part], 0.0008, dice);
  }
  return unit(out);
};

/** Gusts at a low pitch. */
export const wind: Scene = (dice, length, rateHz) => {
  const out = band(dice, length, rateHz, dice.ratio(90, 500), 0.6);
  const gust = new SlowCurve(dice, length / rateHz, 0.6, 0.2, 2);
  for (let k = 0; k < length; k++) out[k] = (out[k] as number) * Math.exp(gust.at(k / rateHz));
  return unit(out);
};

/** Shielding gas that flows while no arc burns. */
export const gasFlow: Scene = (dice, length, rateHz) => drawJet(dice, length, rateHz);

/** Plain white or pink hiss, as a test generator gives it. */
export const whiteHiss: Scene = (dice, length) => white(dice, length);
export const pinkHiss: Scene = (dice, length) => pink(dice, length);

/** A fire: few, sharp cracks of very unlike size over a soft rush. */
export const fire: Scene = (dice, length, rateHz) => {
  const out = pink(dice, length);
  const rate = dice.ratio(3, 40);
  for (let t = 0; t < length / rateHz; t += dice.wait(1 / rate, 1.2)) {
    strike(out, rateHz, t, dice.ratio(1, 40), [], dice.ratio(0.0002, 0.004), dice);
  }
  return unit(out);
};

/** A frying pan: a dense even crackle, much like what a welder calls a good dip arc. */
export const frying: Scene = (dice, length, rateHz) => {
  const out = band(dice, length, rateHz, dice.ratio(2000, 7000), 0.4);
  const rate = dice.ratio(50, 500);
  for (let t = 0; t < length / rateHz; t += dice.wait(1 / rate, 1)) {
    strike(out, rateHz, t, dice.around(3, 0.7), [], dice.ratio(0.0003, 0.003), dice);
  }
  return unit(out);
};

/** Many hands, out of step. */
export const applause: Scene = (dice, length, rateHz) => {
  const out = new Float32Array(length);
  const people = dice.whole(6, 40);
  for (let p = 0; p < people; p++) {
    const period = 1 / dice.between(2.5, 5);
    const tone = { hz: dice.ratio(600, 2500), decayS: 0.006, gain: 1 };
    for (let t = dice.between(0, period); t < length / rateHz; t += dice.wait(period, 0.08)) {
      strike(out, rateHz, t, dice.around(0.6, 0.3), [tone], 0.004, dice);
    }
  }
  return unit(out);
};

/** Water from a tap or a hose. */
export const water: Scene = (dice, length, rateHz) => {
  const out = band(dice, length, rateHz, dice.ratio(700, 3000), 0.5);
  const bubbles = dice.ratio(20, 150);
  for (let t = 0; t < length / rateHz; t += dice.wait(1 / bubbles, 1)) {
    const tone = { hz: dice.ratio(400, 3000), decayS: dice.ratio(0.003, 0.02), gain: 1 };
    strike(out, rateHz, t, dice.around(1.2, 0.5), [tone], 0.0003, dice);
  }
  return unit(out);
};
