import { section } from '../devices/filter.js';
import {
  addBurst,
  addTo,
  colouredNoise,
  drift,
  type NoiseMaker,
  normalised,
  pinkNoise,
  poisson,
} from './noise-tools.js';

// Rates and levels here: own choice by ear, kept wide.

/** Rain: a carpet of hiss and separate drops on something that rings a little. */
export const rain: NoiseMaker = (random, rateHz, count) => {
  const carpet = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(1200, 9000),
    random.uniform(0.25, 0.8),
  );
  const swell = drift(random, rateHz, count, random.uniform(0.2, 2));
  const depth = random.uniform(0, 0.25);
  for (let i = 0; i < count; i++) carpet[i]! *= Math.max(0.2, 1 + depth * swell[i]!);
  const drops = new Float64Array(count);
  const ringHz = random.logUniform(800, 6000);
  poisson(random, rateHz, count, random.logUniform(5, 900), (index) => {
    const peak = (1 - random.next()) ** -0.4;
    const burst = { peak, decayS: random.logUniform(2e-4, 3e-3) };
    const tone = random.next() < 0.4 ? { toneHz: ringHz * random.uniform(0.7, 1.4) } : {};
    addBurst(drops, rateHz, index, { ...burst, ...tone }, random);
  });
  return normalised(addTo(carpet, normalised(drops), random.logUniform(0.1, 2)));
};

/** Fire: rare, very sharp crackles over a low roar. */
export const fire: NoiseMaker = (random, rateHz, count) => {
  const roar = colouredNoise(random, rateHz, count, random.logUniform(80, 600), 0.5);
  const snaps = new Float64Array(count);
  const tail = random.uniform(0.5, 0.9);
  poisson(random, rateHz, count, random.logUniform(3, 60), (index) => {
    const peak = Math.min(60, (1 - random.next()) ** -tail);
    addBurst(snaps, rateHz, index, { peak, decayS: random.logUniform(5e-5, 3e-3) }, random);
  });
  const hiss = colouredNoise(random, rateHz, count, random.logUniform(2000, 8000), 0.4);
  addTo(roar, normalised(snaps), random.logUniform(0.3, 5));
  return normalised(addTo(roar, hiss, random.logUniform(0.02, 0.6)));
};

/** Sea or wind: coloured noise that swells slowly. */
export const sea: NoiseMaker = (random, rateHz, count) => {
  const water = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(300, 3000),
    random.uniform(0.2, 0.6),
  );
  const swell = drift(random, rateHz, count, random.uniform(0.08, 0.6));
  const depth = random.uniform(0.2, 0.8);
  for (let i = 0; i < count; i++) water[i]! *= Math.exp(depth * swell[i]!);
  return normalised(addTo(water, pinkNoise(random, rateHz, count), random.uniform(0, 0.7)));
};

/** Wind at the microphone: gusts of very low noise. */
export const wind: NoiseMaker = (random, rateHz, count) => {
  const low = section('low', rateHz, random.uniform(80, 400), 0.7);
  const air = pinkNoise(random, rateHz, count);
  const gust = drift(random, rateHz, count, random.uniform(0.3, 3));
  for (let i = 0; i < count; i++)
    air[i] = low.next(air[i]!) * Math.exp(0.7 * gust[i]!) + 0.05 * air[i]!;
  return normalised(air);
};

/** A room in which nothing happens: falling noise, perhaps a faint hum. */
export const roomNoise: NoiseMaker = (random, rateHz, count) => {
  const air = pinkNoise(random, rateHz, count);
  const white = colouredNoise(random, rateHz, count, 6000, 0.3);
  addTo(air, white, random.logUniform(0.02, 0.7));
  const hz = random.pick([50, 60, 100, 120, 376]);
  const level = random.next() < 0.5 ? 0 : random.logUniform(0.03, 0.8);
  for (let i = 0; i < count; i++) air[i]! += level * Math.sin((2 * Math.PI * hz * i) / rateHz);
  return normalised(air);
};
