import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import {
  addBurst,
  addTo,
  drift,
  gate,
  harmonics,
  type NoiseMaker,
  normalised,
} from './noise-tools.js';

/** Vowel formants in Hz (from memory of textbooks, rounded): a, e, i, o, u. */
const VOWELS: readonly (readonly [number, number, number])[] = [
  [730, 1090, 2440],
  [530, 1840, 2480],
  [270, 2290, 3010],
  [570, 840, 2410],
  [300, 870, 2240],
];

/** One talker: voiced syllables through moving formants, hissed consonants between. */
function talker(random: Random, rateHz: number, count: number): Float64Array {
  const out = new Float64Array(count);
  const pitch = drift(random, rateHz, count, 1.5);
  const baseHz = random.uniform(85, 240);
  let phase = 0;
  let at = 0;
  while (at < count) {
    const length = Math.floor(random.uniform(0.08, 0.28) * rateHz);
    const kind = random.next();
    const vowel = random.pick(VOWELS);
    const filters = vowel.map((hz) => section('band', rateHz, hz * random.uniform(0.9, 1.1), 8));
    const hissFilter = section('band', rateHz, random.uniform(2500, 7000), 0.8);
    for (let k = 0; k < length && at + k < count; k++) {
      const shape = Math.sin((Math.PI * k) / length);
      phase += (baseHz * (1 + 0.1 * pitch[at + k]!)) / rateHz;
      if (phase >= 1) phase -= 1;
      if (kind < 0.62) {
        const glottis = phase < 0.6 ? 2 * phase - 0.6 : -1.2 * (1 - phase);
        let eventSound = 0;
        for (let f = 0; f < 3; f++) eventSound += filters[f]!.next(glottis) / (1 + f);
        out[at + k] = 4 * eventSound * shape;
      } else if (kind < 0.82) out[at + k] = 0.5 * hissFilter.next(roughNormal(random)) * shape;
    }
    at += length;
  }
  return normalised(out);
}

/** Speech-like babble of one to five talkers who pause. */
export const babble: NoiseMaker = (random, rateHz, count) => {
  const out = new Float64Array(count);
  const talkers = random.integer(1, 5);
  for (let k = 0; k < talkers; k++) {
    const eventSound = talker(random, rateHz, count);
    const pause = gate(random, rateHz, count, random.uniform(1, 4), random.uniform(0.1, 1.2));
    for (let i = 0; i < count; i++) out[i]! += eventSound[i]! * pause[i]!;
  }
  return normalised(out);
};

/** Chords, a bass and a beat. */
export const music: NoiseMaker = (random, rateHz, count) => {
  const out = new Float64Array(count);
  const beatS = 60 / random.uniform(70, 170);
  const root = random.uniform(80, 220);
  for (let beat = 0; beat * beatS * rateHz < count; beat++) {
    const start = Math.floor(beat * beatS * rateHz);
    const chord = random.pick([
      [1, 1.26, 1.5],
      [1, 1.19, 1.5],
      [0.89, 1.12, 1.335],
      [0.75, 1.5, 2],
    ]);
    for (const step of chord) {
      const decayS = random.uniform(0.1, 0.6);
      for (let h = 1; h <= 5; h++) {
        addBurst(out, rateHz, start, { peak: 1 / h, decayS, toneHz: root * step * h * 2 }, random);
      }
    }
    addBurst(out, rateHz, start, { peak: 2, decayS: 0.05, toneHz: 60 }, random);
    if (beat % 2 === 1) addBurst(out, rateHz, start, { peak: 2, decayS: 0.04 }, random);
    const half = start + Math.floor(0.5 * beatS * rateHz);
    addBurst(out, rateHz, half, { peak: 0.8, decayS: 0.015 }, random);
  }
  return normalised(out);
};

/** Hammer on plate: hard strokes that ring, evenly or not. */
export const hammer: NoiseMaker = (random, rateHz, count) => {
  const out = new Float64Array(count);
  const modes = Array.from({ length: random.integer(3, 9) }, () => ({
    toneHz: random.logUniform(200, 9000),
    decayS: random.logUniform(0.004, 0.25),
    peak: random.uniform(0.1, 1),
  }));
  const everyS = random.logUniform(0.08, 1.2);
  const uneven = random.uniform(0.02, 0.6);
  for (let t = random.uniform(0, everyS); t * rateHz < count; ) {
    const strength = Math.exp(0.4 * random.normal());
    const start = Math.floor(t * rateHz);
    for (const mode of modes) {
      addBurst(out, rateHz, start, { ...mode, peak: mode.peak * strength }, random);
    }
    addBurst(out, rateHz, start, { peak: 2 * strength, decayS: 0.001 }, random);
    t += everyS * Math.max(0.2, 1 + uneven * random.normal());
  }
  return normalised(out);
};

/** Alarm: tones switched or swept. */
export const alarm: NoiseMaker = (random, rateHz, count) => {
  const low = random.uniform(500, 2500);
  const high = low * random.uniform(1, 1.6);
  const hz = random.uniform(0.5, 8);
  const sweep = random.next() < 0.4;
  const speed = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const turn = (i * hz) / rateHz - Math.floor((i * hz) / rateHz);
    speed[i] = sweep ? low + (high - low) * turn : turn < 0.5 ? low : high;
  }
  const out = harmonics(rateHz, speed, [1, 0.4, 0.3, 0.1]);
  const beep = random.next() < 0.5;
  for (let i = 0; beep && i < count; i++) if (((i * hz) / rateHz) % 1 > 0.5) out[i] = 0;
  return normalised(out);
};

/** Clicks: a clock, a relay, a ratchet. */
export const clicks: NoiseMaker = (random, rateHz, count) => {
  const out = new Float64Array(count);
  const perSecond = random.logUniform(0.8, 60);
  const uneven = random.pick([0, 0.002, 0.05, 0.5]);
  const toneHz = random.logUniform(700, 8000);
  for (let t = 0.3 / perSecond; t * rateHz < count; ) {
    const peak = Math.exp(0.2 * random.normal());
    const decayS = random.logUniform(3e-4, 4e-3);
    const tone = random.next() < 0.5 ? { toneHz } : {};
    addBurst(out, rateHz, Math.floor(t * rateHz), { peak, decayS, ...tone }, random);
    t += Math.max(0.1, 1 + uneven * random.normal()) / perSecond;
  }
  const floor = random.logUniform(1e-4, 0.05);
  for (let i = 0; i < count; i++) out[i]! += floor * roughNormal(random);
  return normalised(addTo(out, new Float64Array(0)));
};
