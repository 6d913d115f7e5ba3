import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import {
  addTo,
  colouredNoise,
  drift,
  gate,
  harmonics,
  type NoiseMaker,
  normalised,
  pinkNoise,
} from './noise-tools.js';

// Speeds, beats and levels of all machines here: common practice, no source, kept wide.

/** A falling series of harmonic amplitudes with random scatter. */
function series(random: Random, count: number, fall: number): number[] {
  return Array.from({ length: count }, (_, k) => (k + 1) ** -fall * random.uniform(0.2, 1));
}

function steadySpeed(
  random: Random,
  rateHz: number,
  count: number,
  hz: number,
  unrest: number,
): Float64Array {
  const out = drift(random, rateHz, count, 0.7);
  for (let i = 0; i < count; i++) out[i] = hz * (1 + unrest * out[i]!);
  return out;
}

/** Blade-pass tones over the rush of air. */
export const fan: NoiseMaker = (random, rateHz, count) => {
  const speed = steadySpeed(random, rateHz, count, random.logUniform(40, 520), 0.002);
  const tone = normalised(harmonics(rateHz, speed, series(random, 8, 1.2)));
  const air = colouredNoise(random, rateHz, count, random.logUniform(150, 1500), 0.35);
  return normalised(addTo(air, tone, random.logUniform(0.1, 1.5)));
};

/** A grinder whose speed sags as it is pressed on: shaft and gear lines over a scream of broadband. */
export const grinder: NoiseMaker = (random, rateHz, count) => {
  const load = gate(random, rateHz, count, random.uniform(0.5, 4), random.uniform(0.2, 1.5));
  const sag = random.uniform(0.03, 0.25);
  const wander = drift(random, rateHz, count, 3);
  const shaftHz = random.uniform(110, 200);
  const speed = load.map((l, i) => shaftHz * (1 - sag * l * (1 + 0.2 * wander[i]!)));
  const gear = random.integer(6, 14);
  const tones = series(random, gear * 3, 0.6).map((a, k) =>
    (k + 1) % gear === 0 ? 2 * a : 0.5 * a,
  );
  const out = normalised(harmonics(rateHz, speed, tones));
  const scream = colouredNoise(random, rateHz, count, random.logUniform(2500, 8000), 0.5);
  const depth = random.uniform(0, 0.6);
  let phase = 0;
  for (let i = 0; i < count; i++) {
    phase += (2 * Math.PI * speed[i]!) / rateHz;
    out[i] =
      out[i]! * 0.6 +
      scream[i]! * (0.15 + load[i]! * 1.5) * (1 + depth * Math.sin(phase) + 0.15 * wander[i]!);
  }
  return normalised(out);
};

/** Piston beats that modulate broadband, on a motor hum. */
export const compressor: NoiseMaker = (random, rateHz, count) => {
  const beat = steadySpeed(random, rateHz, count, random.uniform(8, 45), 0.004);
  const pulse = harmonics(rateHz, beat, series(random, 10, 0.5));
  const air = pinkNoise(random, rateHz, count);
  const hum = harmonics(
    rateHz,
    new Float64Array(count).fill(random.pick([50, 60])),
    [0.3, 1, 0.4, 0.5],
  );
  const depth = random.uniform(0.2, 0.8);
  for (let i = 0; i < count; i++) air[i] = air[i]! * (1 + depth * pulse[i]!) + 0.4 * hum[i]!;
  return normalised(addTo(air, pulse, random.uniform(0.1, 1)));
};

/** Small two-stroke: sharp exhaust pulses that modulate broadband, speed going up and down. */
export const twoStroke: NoiseMaker = (random, rateHz, count) => {
  const baseHz = random.uniform(45, 190);
  const rev = drift(random, rateHz, count, random.uniform(0.3, 2));
  const swing = random.uniform(0.02, 0.2);
  const rough = random.uniform(0.02, 0.15);
  const noise = colouredNoise(random, rateHz, count, random.logUniform(1000, 5000), 0.4);
  const out = new Float64Array(count);
  const body = section('low', rateHz, random.uniform(400, 1500), 0.9);
  let phase = 0;
  let strength = 1;
  const sharp = random.uniform(4, 20);
  for (let i = 0; i < count; i++) {
    phase += (baseHz * (1 + swing * rev[i]!)) / rateHz;
    if (phase >= 1) {
      phase -= 1;
      strength = Math.max(0.2, 1 + 3 * rough * random.normal());
    }
    const puff = strength * Math.exp(-sharp * phase);
    out[i] = body.next(3 * puff) + noise[i]! * (0.25 + puff);
  }
  return normalised(section('high', rateHz, 60).run(out));
};

/** Blade slap: slow strong beats of low noise with some high. */
export const helicopter: NoiseMaker = (random, rateHz, count) => {
  const hz = random.uniform(9, 30);
  const speed = steadySpeed(random, rateHz, count, hz, 0.004);
  const low = colouredNoise(random, rateHz, count, random.logUniform(120, 700), 0.5);
  const high = colouredNoise(random, rateHz, count, random.logUniform(1500, 5000), 0.4);
  const whine = harmonics(
    rateHz,
    steadySpeed(random, rateHz, count, random.uniform(300, 900), 1e-3),
    [1, 0.3],
  );
  const share = random.uniform(0.05, 0.6);
  const sharp = random.uniform(1, 6);
  let phase = 0;
  for (let i = 0; i < count; i++) {
    phase += (2 * Math.PI * speed[i]!) / rateHz;
    const beat = Math.exp(sharp * (Math.cos(phase) - 1));
    low[i] = low[i]! * (0.2 + 2 * beat) + share * high[i]! * (0.2 + beat) + 0.1 * whine[i]!;
  }
  return normalised(low);
};

/** Vacuum cleaner, air nozzle, ventilator: steady coloured hiss with a whine. */
export const vacuum: NoiseMaker = (random, rateHz, count) => {
  const air = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(600, 9000),
    random.uniform(0.2, 0.8),
  );
  const speed = steadySpeed(random, rateHz, count, random.logUniform(180, 3000), 0.003);
  const whine = normalised(harmonics(rateHz, speed, series(random, 5, 1)));
  return normalised(addTo(air, whine, random.next() < 0.3 ? 0 : random.logUniform(0.03, 0.8)));
};

/** Mains hum and its harmonics. */
export const mainsHum: NoiseMaker = (random, rateHz, count) => {
  const speed = new Float64Array(count).fill(random.pick([50, 60]) * random.uniform(0.998, 1.002));
  return normalised(harmonics(rateHz, speed, series(random, 20, random.uniform(0.3, 1.5))));
};
