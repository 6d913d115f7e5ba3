import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import {
  addBurst,
  addTo,
  colouredNoise,
  drift,
  harmonics,
  type NoiseMaker,
  normalised,
  triggered,
} from './noise-tools.js';

// Machines that beat or whirr, with a trigger. Speeds, strokes and levels: common practice, no source, kept wide.

/** Needle scaler, hammer drill, impact wrench, riveter: even blows that ring, over the hiss of air or a motor. */
export const impacts: NoiseMaker = (random, rateHz, count) => {
  const modes = Array.from({ length: random.integer(1, 6) }, () => ({
    toneHz: random.logUniform(300, 9000),
    decayS: random.logUniform(0.002, 0.04),
    peak: random.logUniform(0.03, 1),
  }));
  const perSecond = random.logUniform(8, 95);
  const uneven = random.logUniform(0.003, 0.25);
  const scatter = random.uniform(0.05, 0.5);
  const crackS = random.logUniform(3e-4, 6e-3);
  const rebound = random.next() < 0.5 ? random.logUniform(0.05, 0.8) : 0;
  const reboundS = random.logUniform(0.001, 0.008);
  const trigger = drawTrigger(random, rateHz, count);
  const out = new Float64Array(count);
  const strike = (atS: number, strength: number): void => {
    const at = Math.floor(atS * rateHz);
    addBurst(out, rateHz, at, { peak: strength, decayS: crackS }, random);
    for (const mode of modes)
      addBurst(out, rateHz, at, { ...mode, peak: mode.peak * strength }, random);
  };
  for (let t = 0; t * rateHz < count; ) {
    const speed = trigger[Math.floor(t * rateHz)]!;
    if (speed < 0.05) {
      t += 0.005;
      continue;
    }
    const strength = speed * Math.exp(scatter * random.normal());
    strike(t, strength);
    if (rebound > 0) strike(t + reboundS, rebound * strength);
    t += Math.max(0.2, 1 + uneven * random.normal()) / (perSecond * speed);
  }
  normalised(out);
  const air = colouredNoise(random, rateHz, count, random.logUniform(700, 9000), 0.4);
  const level = random.logUniform(0.02, 1);
  for (let i = 0; i < count; i++) out[i]! += level * air[i]! * trigger[i]!;
  return normalised(out);
};

/** Four-stroke and diesel engines of one to six cylinders: exhaust, knock and rattle at each firing. */
export const engine: NoiseMaker = (random, rateHz, count) => {
  const cylinders = random.pick([1, 2, 3, 4, 4, 6]);
  const pattern = random.uniform(0, 0.5);
  const share = Array.from({ length: cylinders }, () => Math.exp(pattern * random.normal()));
  const firingHz = random.logUniform(10, 140);
  const rev = drift(random, rateHz, count, random.uniform(0.2, 2));
  const swing = random.logUniform(0.002, 0.1);
  const scatter = random.uniform(0.02, 0.3);
  const puffS = random.logUniform(0.001, 0.015);
  const knockS = random.logUniform(2e-4, 0.002);
  const knock = random.logUniform(0.02, 3);
  const exhaust = section('low', rateHz, random.logUniform(300, 5000));
  const sharp = new Float64Array(count);
  const out = new Float64Array(count);
  for (let t = 0, n = 0; t * rateHz < count; n++) {
    const at = Math.floor(t * rateHz);
    const peak = share[n % cylinders]! * Math.exp(scatter * random.normal());
    addBurst(out, rateHz, at, { peak, decayS: puffS }, random);
    addBurst(sharp, rateHz, at, { peak: peak * knock, decayS: knockS }, random);
    t += 1 / (firingHz * Math.max(0.5, 1 + swing * rev[at]!));
  }
  exhaust.run(out);
  normalised(out);
  addTo(out, section('high', rateHz, random.logUniform(300, 4000)).run(sharp));
  normalised(out);
  const hiss = colouredNoise(random, rateHz, count, random.logUniform(600, 8000), 0.35);
  return normalised(addTo(out, hiss, random.logUniform(0.03, 1)));
};

/** Hand drill, mixer, sewing machine: a brushed motor that spins up, with its gear and the noise of its brushes. */
export const motor: NoiseMaker = (random, rateHz, count) => {
  const trigger = drawTrigger(random, rateHz, count);
  const shaftHz = random.logUniform(30, 500);
  const wander = drift(random, rateHz, count, 1.5);
  const unrest = random.logUniform(0.002, 0.05);
  const speed = trigger.map((on, i) => shaftHz * on * (1 + unrest * wander[i]!));
  const gear = random.integer(4, 40);
  const fall = random.uniform(0.3, 1.4);
  const tones = Array.from({ length: 2 * gear }, (_, k) =>
    (k + 1) % gear === 0 ? random.uniform(0.5, 3) : (k + 1) ** -fall * random.next(),
  );
  const out = normalised(harmonics(rateHz, speed, tones));
  const air = colouredNoise(
    random,
    rateHz,
    count,
    random.logUniform(800, 9000),
    random.uniform(0.2, 0.7),
  );
  const depth = random.uniform(0, 0.9);
  const bars = random.integer(1, 12);
  const level = random.logUniform(0.1, 3);
  let phase = 0;
  for (let i = 0; i < count; i++) {
    phase += (2 * Math.PI * bars * speed[i]!) / rateHz;
    out[i] = trigger[i]! * (out[i]! + level * air[i]! * (1 + depth * Math.sin(phase)));
  }
  return normalised(out);
};

/** One person who talks, with stops and hard consonants: the level leaps at each word. */
export const speech: NoiseMaker = (random, rateHz, count) => {
  const out = new Float64Array(count);
  const pitch = drift(random, rateHz, count, 2);
  const baseHz = random.logUniform(75, 280);
  const effort = random.uniform(1, 5);
  const hissLevel = random.logUniform(0.1, 1.2);
  for (let t = random.uniform(0, 0.5); t * rateHz < count; ) {
    t = word(out, t);
    t += random.next() < 0.2 ? random.uniform(0.3, 1) : random.uniform(0.03, 0.2);
  }
  return normalised(out);

  function word(into: Float64Array, fromS: number): number {
    let t = fromS;
    for (let left = random.integer(1, 4); left > 0; left--) {
      if (random.next() < 0.5) {
        const burst = { peak: random.logUniform(0.3, 3), decayS: random.logUniform(0.003, 0.02) };
        addBurst(into, rateHz, Math.floor(t * rateHz), burst, random);
        t += 0.02;
      }
      if (random.next() < 0.5) t = consonant(into, t);
      t = vowel(into, t);
    }
    return t;
  }

  function consonant(into: Float64Array, fromS: number): number {
    const lastsS = random.uniform(0.05, 0.2);
    const band = section('band', rateHz, random.logUniform(2000, 8000), random.uniform(0.5, 2));
    const from = Math.floor(fromS * rateHz);
    const n = Math.floor(lastsS * rateHz);
    for (let k = 0; k < n && from + k < count; k++)
      into[from + k]! +=
        hissLevel * band.next(roughNormal(random)) * Math.sin((Math.PI * k) / n) ** 0.5;
    return fromS + 0.8 * lastsS;
  }

  function vowel(into: Float64Array, fromS: number): number {
    const lastsS = random.uniform(0.06, 0.3);
    const formants = [
      random.uniform(250, 850),
      random.uniform(800, 2400),
      random.uniform(2200, 3200),
      random.uniform(3200, 4500),
    ].map((hz) => section('band', rateHz, hz, random.uniform(5, 12)));
    const from = Math.floor(fromS * rateHz);
    const n = Math.floor(lastsS * rateHz);
    let phase = 0;
    for (let k = 0; k < n && from + k < count; k++) {
      phase += (baseHz * (1 + 0.15 * pitch[from + k]!)) / rateHz;
      if (phase >= 1) phase -= 1;
      const source = Math.exp(-effort * phase) - 0.3 + 0.02 * roughNormal(random);
      let eventSound = 0;
      formants.forEach((formant, f) => {
        eventSound += formant.next(source) / (1 + 0.7 * f);
      });
      into[from + k]! += 3 * eventSound * Math.sin((Math.PI * k) / n) ** 0.4;
    }
    return fromS + lastsS;
  }
};

/** Speed of what a finger switches: on and off, spinning up and down; a third runs on. */
function drawTrigger(random: Random, rateHz: number, count: number): Float64Array {
  if (random.next() < 0.35) return new Float64Array(count).fill(1);
  return triggered(random, rateHz, count, {
    onS: random.logUniform(0.4, 5),
    offS: random.uniform(0.2, 2),
    riseS: random.logUniform(0.003, 0.5),
    fallS: random.logUniform(0.005, 0.6),
  }).level;
}
