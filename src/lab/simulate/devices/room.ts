import type { Random } from '../../../core/index.js';
import { roughNormal } from '../physics/motion.js';
import { convolve } from './convolve.js';
import { section } from './filter.js';

/** A room between arc and microphone. */
export interface RoomSpec {
  /** Time for the reverberation to fall by 60 dB, at mid frequencies. */
  rt60S: number;
  /** Energy of the reverberation against the direct sound, dB. */
  reverberantDb: number;
  /** How much faster the treble dies, 0 (no) to 1. */
  damping: number;
  /** Separate early reflections. */
  earlyCount: number;
}

/** Direct sound, early reflections and an exponential noise tail. */
export function roomResponse(spec: RoomSpec, random: Random, rateHz: number): Float64Array {
  const length = Math.ceil(Math.min(0.65 * spec.rt60S, 1) * rateHz) + 64;
  const tail = new Float64Array(length);
  const startS = random.uniform(0.004, 0.02);
  const dull = section('low', rateHz, 6000 - 4000 * spec.damping, 0.6);
  for (let i = Math.floor(startS * rateHz); i < length; i++) {
    const t = i / rateHz;
    const white = roughNormal(random);
    const soft = dull.next(white);
    const treble = (white - soft) * Math.exp((-6.91 * (1 + 3 * spec.damping) * t) / spec.rt60S);
    tail[i] = soft * Math.exp((-6.91 * t) / spec.rt60S) + treble;
  }
  for (let k = 0; k < spec.earlyCount; k++) {
    const at = Math.floor(random.logUniform(0.0008, 0.04) * rateHz);
    if (at < length) tail[at]! += random.uniform(-1, 1) * 6 * Math.exp(-at / (0.03 * rateHz));
  }
  let energy = 0;
  for (const h of tail) energy += h * h;
  const gain = Math.sqrt(10 ** (spec.reverberantDb / 10) / energy);
  for (let i = 0; i < length; i++) tail[i]! *= gain;
  tail[0] = 1;
  return tail;
}

/** Sound as heard in the room. */
export function inRoom(
  samples: Float64Array,
  spec: RoomSpec,
  random: Random,
  rateHz: number,
): Float64Array {
  return convolve(samples, roomResponse(spec, random, rateHz));
}
