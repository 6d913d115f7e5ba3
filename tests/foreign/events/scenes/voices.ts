import { mix, scale, white } from '../filters.js';
import { fallOff, harmonics, level, type Scene, shape } from './kit.js';

/**
 * One to five speakers: gliding voice through three resonances in syllables, with hissed
 * consonants.
 */
export const babble: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const speakers = rng.int(1, 5);
  for (let s = 0; s < speakers; s++) {
    const base = rng.logRange(90, 240);
    let at = Math.floor(rng.range(0, 0.4) * rateHz);
    while (at < n) {
      const length = Math.min(n - at, Math.floor(rng.range(0.08, 0.28) * rateHz));
      if (length < 200) break;
      const part = new Float32Array(length);
      const from = base * rng.range(0.85, 1.25);
      const to = base * rng.range(0.8, 1.15);
      const lengthS = length / rateHz;
      const hissed = rng.chance(0.22);
      if (hissed) mix(part, shape(white(rng, length), rateHz, 'highpass', rng.range(2500, 5000)));
      else {
        harmonics(part, rateHz, (t) => from + ((to - from) * t) / lengthS, fallOff(rng, 20, 0.9));
        shape(part, rateHz, 'peak', rng.range(300, 800), 4, 14);
        shape(part, rateHz, 'peak', rng.range(900, 2300), 5, 12);
        shape(part, rateHz, 'lowpass', rng.range(2800, 4500));
      }
      level(part);
      for (let i = 0; i < length; i++) {
        part[i] = (part[i] as number) * Math.sin((Math.PI * i) / length) ** 0.7;
      }
      mix(out, part, at, (hissed ? 0.35 : 1) * rng.range(0.5, 1.2));
      at += length + Math.floor((rng.chance(0.15) ? rng.range(0.2, 0.7) : 0.02) * rateHz);
    }
  }
  return level(mix(level(out), white(rng, n), 0, 0.01));
};

/** Music-like notes: chords of a scale with a beat. */
export const music: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const root = rng.logRange(80, 300);
  const scaleSteps = [0, 2, 4, 5, 7, 9, 11, 12, 14, 16];
  const beatS = rng.range(0.15, 0.5);
  const beat = Math.floor(beatS * rateHz);
  const bright = rng.range(0.6, 1.6);
  for (let at = 0; at < n; at += beat) {
    const notes = rng.int(1, 3);
    for (let k = 0; k < notes; k++) {
      const hz = root * 2 ** (rng.pick(scaleSteps) / 12);
      const length = Math.min(n - at, Math.floor(beat * rng.range(0.8, 2.5)));
      const note = harmonics(new Float32Array(length), rateHz, () => hz, fallOff(rng, 8, bright));
      for (let i = 0; i < length; i++) {
        const t = i / rateHz;
        note[i] = (note[i] as number) * Math.min(1, t / 0.008) * Math.exp(-t / (1.2 * beatS));
      }
      mix(out, note, at);
    }
    if (rng.chance(0.6)) {
      const hit = white(rng, Math.min(n - at, Math.floor(0.05 * rateHz)));
      for (let i = 0; i < hit.length; i++)
        hit[i] = (hit[i] as number) * Math.exp((-90 * i) / rateHz);
      mix(out, hit, at, rng.range(0.2, 1));
    }
  }
  return level(out);
};

/** One to three steady tones, some of them beating or gated as an alarm. */
export const tones: Scene = (rng, n, rateHz) => {
  const out = new Float32Array(n);
  const count = rng.int(1, 3);
  for (let k = 0; k < count; k++) {
    const hz = rng.logRange(120, 5000);
    harmonics(out, rateHz, () => hz, [1, rng.range(0, 0.3)]);
  }
  if (rng.chance(0.4)) {
    const everyS = rng.range(0.1, 1);
    for (let i = 0; i < n; i++) if ((i / rateHz / everyS) % 1 > 0.5) out[i] = 0;
  }
  return level(out);
};

/** Reverse-warning or siren sweep. */
export const siren: Scene = (rng, n, rateHz) => {
  const mid = rng.logRange(500, 1800);
  const rate = rng.logRange(0.3, 4);
  const depth = rng.range(0.1, 0.4);
  const hz = (t: number) => mid * (1 + depth * Math.sin(2 * Math.PI * rate * t));
  const x = harmonics(new Float32Array(n), rateHz, hz, fallOff(rng, 5, 1));
  return level(mix(scale(level(x), 1), white(rng, n), 0, 0.02));
};
