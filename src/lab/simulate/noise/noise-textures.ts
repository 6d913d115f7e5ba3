import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import {
  addBurst,
  addTo,
  colouredNoise,
  drift,
  type NoiseMaker,
  normalised,
  poisson,
  triggered,
} from './noise-tools.js';

// What hisses, rustles or crackles without being an arc. Rates, sizes and levels: own choice, kept wide.

/** Gas, air or water out of a nozzle, opened and shut by a valve or running on; it may whistle or bubble. */
export const jet: NoiseMaker = (random, rateHz, count) => {
  const out = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(800, 12_000),
    random.uniform(0.15, 0.7),
  );
  const second = colouredNoise(random, rateHz, count, random.logUniform(300, 9000), 0.4);
  addTo(out, second, random.uniform(0, 1));
  const unrest = drift(random, rateHz, count, random.logUniform(2, 60));
  const depth = random.uniform(0, 0.2);
  for (let i = 0; i < count; i++) out[i]! *= Math.max(0.2, 1 + depth * unrest[i]!);
  if (random.next() < 0.4) addTo(out, bubbles(random, rateHz, count), random.logUniform(0.1, 1.5));
  if (random.next() < 0.2) {
    const hz = random.logUniform(1500, 9000);
    const level = random.logUniform(0.05, 1);
    for (let i = 0; i < count; i++)
      out[i]! += level * Math.sin((2 * Math.PI * hz * i) / rateHz + 3 * unrest[i]!);
  }
  if (random.next() < 0.4) return normalised(out);
  const valve = triggered(random, rateHz, count, {
    onS: random.logUniform(0.3, 5),
    offS: random.uniform(0.2, 2),
    riseS: random.logUniform(0.001, 0.1),
    fallS: random.logUniform(0.005, 0.5),
  });
  for (let i = 0; i < count; i++) out[i]! *= valve.level[i]!;
  if (random.next() < 0.5)
    for (const at of valve.edges)
      addBurst(out, rateHz, at, { peak: random.logUniform(1, 8), decayS: 0.002 }, random);
  return normalised(out);
};

function bubbles(random: Random, rateHz: number, count: number): Float64Array {
  const out = new Float64Array(count);
  const toneHz = random.logUniform(300, 3000);
  poisson(random, rateHz, count, random.logUniform(10, 400), (index) => {
    const hz = toneHz * random.uniform(0.6, 1.7);
    const burst = { peak: (1 - random.next()) ** -0.3, decayS: random.logUniform(0.001, 0.02) };
    addBurst(out, rateHz, index, { ...burst, toneHz: hz }, random);
  });
  return normalised(out);
}

/** Many small blows at random: clapping, frying, gravel, hail, corn that pops, a crowd of keys. */
export const grains: NoiseMaker = (random, rateHz, count) => {
  const perSecond = random.logUniform(15, 3000);
  const decayS = random.logUniform(3e-4, 0.012);
  const spread = random.uniform(0.2, 1.3);
  const swell = drift(random, rateHz, count, random.logUniform(0.1, 3));
  const depth = random.uniform(0, 0.6);
  const out = new Float64Array(count);
  const colours = random.integer(1, 4);
  for (let c = 0; c < colours; c++) {
    const part = new Float64Array(count);
    poisson(random, rateHz, count, perSecond / colours, (index) => {
      const peak = Math.exp(spread * random.normal() + depth * swell[index]!);
      const burst = { peak, decayS: decayS * random.logUniform(0.5, 2) };
      addBurst(part, rateHz, index, burst, random);
    });
    const hz = random.logUniform(600, 10_000);
    addTo(out, section('band', rateHz, hz, random.logUniform(0.25, 3)).run(part));
  }
  normalised(out);
  const hiss = colouredNoise(random, rateHz, count, random.logUniform(1000, 9000), 0.4);
  return normalised(addTo(out, hiss, random.next() < 0.3 ? 0 : random.logUniform(0.02, 1)));
};

/** Strokes of sandpaper, a file, a saw, a broom, a zip: hiss that comes and goes, with or without teeth. */
export const strokes: NoiseMaker = (random, rateHz, count) => {
  const out = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(900, 9000),
    random.uniform(0.2, 1),
  );
  const perSecond = random.logUniform(0.4, 9);
  const uneven = random.uniform(0, 0.3);
  const teethHz = random.next() < 0.4 ? 0 : random.logUniform(20, 500);
  const sharp = random.uniform(1, 8);
  const shape = random.uniform(0.2, 2);
  const pause = random.uniform(0, 0.6);
  let turn = random.next();
  let pace = 1;
  let tooth = 0;
  for (let i = 0; i < count; i++) {
    turn += (perSecond * pace) / rateHz;
    if (turn >= 1) {
      turn -= 1;
      pace = Math.max(0.3, 1 + uneven * random.normal());
    }
    const speed = turn < pause ? 0 : Math.sin((Math.PI * (turn - pause)) / (1 - pause)) ** shape;
    tooth += (teethHz * speed) / rateHz;
    const bite = teethHz > 0 ? 0.15 + Math.exp(-sharp * (tooth % 1)) : 1;
    out[i]! *= speed * bite;
  }
  return normalised(out);
};

/** The buzz of a transformer, a relay or a corona: broadband bursts at twice the mains frequency. */
export const buzz: NoiseMaker = (random, rateHz, count) => {
  const mainsHz = random.pick([50, 60]) * random.uniform(0.999, 1.001);
  const sharp = random.logUniform(0.5, 20);
  const scatter = random.uniform(0, 0.6);
  const lame = random.uniform(0, 0.8);
  const hz = random.logUniform(1500, 10_000);
  const band = section('band', rateHz, hz, random.uniform(0.2, 1));
  const tone = random.logUniform(0.02, 2);
  const hiss = random.logUniform(0.02, 0.5);
  const out = new Float64Array(count);
  let last = -1;
  let strength = 1;
  for (let i = 0; i < count; i++) {
    const halves = (2 * mainsHz * i) / rateHz;
    if (Math.floor(halves) !== last) {
      last = Math.floor(halves);
      strength = Math.max(0, 1 + scatter * random.normal()) * (last % 2 === 0 ? 1 : 1 - lame);
    }
    const wave = Math.abs(Math.sin(Math.PI * halves));
    out[i] = band.next((hiss + strength * wave ** sharp) * roughNormal(random));
  }
  normalised(out);
  for (let i = 0; i < count; i++) {
    const angle = (4 * Math.PI * mainsHz * i) / rateHz;
    out[i]! += tone * (Math.sin(angle) + 0.5 * Math.sin(2 * angle) + 0.3 * Math.sin(3 * angle));
  }
  return normalised(out);
};
