import { filter, type Section, section } from './filters.js';
import type { Rng } from './rng.js';

/**
 * A delay line of the tail: its length in samples and what is left of a sound that ran through it.
 */
interface Line {
  length: number;
  keep: number;
}

/** A room as the recorder hears it: first echoes and a tail, both behind the direct sound. */
export interface Room {
  taps: readonly { delay: number; gain: number }[];
  lines: readonly Line[];
  tailGain: number;
  /** Damping of the tail by air and walls, 0 to 1. */
  damping: number;
}

/**
 * Draws a room: tail of 0.1-1.8 s (domain sheet 8: 1-3 s in halls, shorter near the arc; own
 * choice of spans).
 */
export function drawRoom(rng: Rng, rateHz: number, large: boolean): Room {
  const rt60S = large ? rng.logRange(0.35, 1.8) : rng.logRange(0.08, 0.5);
  const distanceM = large ? rng.logRange(0.3, 3) : rng.logRange(0.2, 1);
  const taps = Array.from({ length: rng.int(3, 9) }, () => {
    const pathM = rng.logRange(0.5, large ? 18 : 6);
    const gain = (distanceM / (distanceM + pathM)) * rng.range(0.4, 0.9);
    return {
      delay: Math.max(1, Math.round((pathM / 343) * rateHz)),
      gain: rng.chance(0.5) ? gain : -gain,
    };
  });
  const lines = Array.from({ length: 4 }, () => {
    const s = rng.range(0.013, large ? 0.061 : 0.031);
    return { length: Math.round(s * rateHz), keep: 10 ** ((-3 * s) / rt60S) };
  });
  return {
    taps,
    lines,
    tailGain: 0.27 * distanceM * rng.range(0.3, 1.1),
    damping: rng.range(0.1, 0.6),
  };
}

/**
 * Plays a sound in the room; the direct sound keeps its time, the tail is cut at the end of the
 * array.
 */
export function playInRoom(x: Float32Array, room: Room): Float32Array {
  const y = x.slice();
  for (const { delay, gain } of room.taps) {
    for (let i = delay; i < x.length; i++) {
      y[i] = (y[i] as number) + gain * (x[i - delay] as number);
    }
  }
  // four delay lines fed back through a reflection (Householder) matrix, each with a soft low-pass
  const [l0, l1, l2, l3] = room.lines as [Line, Line, Line, Line];
  const [b0, b1, b2, b3] = [l0, l1, l2, l3].map((l) => new Float32Array(l.length)) as [
    Float32Array,
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  let [p0, p1, p2, p3] = [0, 0, 0, 0];
  let [s0, s1, s2, s3] = [0, 0, 0, 0];
  const d = 1 - room.damping;
  for (let i = 0; i < x.length; i++) {
    s0 += d * ((b0[p0] as number) - s0);
    s1 += d * ((b1[p1] as number) - s1);
    s2 += d * ((b2[p2] as number) - s2);
    s3 += d * ((b3[p3] as number) - s3);
    const v0 = s0 * l0.keep;
    const v1 = s1 * l1.keep;
    const v2 = s2 * l2.keep;
    const v3 = s3 * l3.keep;
    const shared = 0.5 * (v0 + v1 + v2 + v3);
    const input = x[i] as number;
    b0[p0] = v0 - shared + input;
    b1[p1] = v1 - shared - input;
    b2[p2] = v2 - shared + input;
    b3[p3] = v3 - shared - input;
    if (++p0 === l0.length) p0 = 0;
    if (++p1 === l1.length) p1 = 0;
    if (++p2 === l2.length) p2 = 0;
    if (++p3 === l3.length) p3 = 0;
    y[i] = (y[i] as number) + room.tailGain * (v0 - v1 + v2 - v3);
  }
  return y;
}

/**
 * Draws a microphone: cuts at both ends and up to three humps; a phone has more of each (own
 * choice).
 */
export function drawMicrophone(
  rng: Rng,
  rateHz: number,
  quality: 'good' | 'phone' | 'call',
): Section[] {
  if (quality === 'call') {
    // telephone band of 300-3400 Hz (common practice)
    return [
      section('highpass', rng.range(200, 320), 0.8, rateHz),
      section('highpass', rng.range(150, 300), 0.7, rateHz),
      section('lowpass', rng.range(3200, 3700), 0.9, rateHz),
    ];
  }
  const phone = quality === 'phone';
  const out = [
    section('highpass', phone ? rng.logRange(70, 280) : rng.logRange(20, 90), 0.7, rateHz),
    section('lowpass', phone ? rng.logRange(6500, 18000) : rng.range(15000, 21000), 0.7, rateHz),
  ];
  const humps = phone ? rng.int(1, 3) : rng.int(0, 2);
  for (let k = 0; k < humps; k++) {
    const gainDb = phone ? rng.range(-7, 9) : rng.range(-3, 4);
    out.push(section('peak', rng.logRange(600, 11000), rng.range(0.6, 3), rateHz, gainDb));
  }
  return out;
}

/** Room and microphone in one. */
export function pickUp(x: Float32Array, room: Room, microphone: readonly Section[]): Float32Array {
  return filter(playInRoom(x, room), microphone);
}
