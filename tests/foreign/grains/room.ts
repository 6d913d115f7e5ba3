import type { Dice } from './dice.js';

/** A room between source and microphone: the direct path, a few first echoes and a tail. */
export interface Room {
  /** Delay in samples and gain of each first echo. */
  echoes: { delay: number; gain: number }[];
  /** Delay in samples and feedback of the loops that make the tail. */
  loops: { delay: number; back: number }[];
  /** Loss of high tones on each turn, 0 to 1. */
  damping: number;
  tailGain: number;
  /** Length of the tail worth keeping, samples. */
  reach: number;
}

/**
 * Draws a room: from an open yard to a hall with a tail of 1-2 s (halls 1-3 s, Sabine, from
 * memory).
 */
export function drawRoom(dice: Dice, rateHz: number): Room {
  const tailS = dice.ratio(0.08, 1.8);
  const echoes = Array.from({ length: dice.whole(2, 6) }, () => {
    const delayS = dice.ratio(0.0015, 0.04);
    const sign = dice.chance(0.85) ? 1 : -1;
    return {
      delay: Math.round(delayS * rateHz),
      gain: sign * dice.between(0.1, 0.6) * Math.min(1, 0.004 / delayS + 0.15),
    };
  });
  const loops = [0.0297, 0.0371, 0.0411, 0.0437].map((delayS) => {
    const moved = delayS * dice.between(0.75, 1.3);
    return { delay: Math.round(moved * rateHz), back: 10 ** ((-3 * moved) / tailS) };
  });
  return {
    echoes,
    loops,
    damping: dice.between(0.1, 0.6),
    tailGain: dice.ratio(0.01, 0.16),
    reach: Math.round(Math.min(0.6, tailS) * rateHz),
  };
}

/** Sends a sound through the room, in place. */
export function sendThroughRoom(room: Room, samples: Float32Array): Float32Array {
  const dry = samples.slice();
  const wet = new Float32Array(samples.length);
  for (const { delay, back } of room.loops) {
    const line = new Float32Array(delay);
    let at = 0;
    let dull = 0;
    for (let k = 0; k < dry.length; k++) {
      const old = line[at] as number;
      dull = old + room.damping * (dull - old);
      line[at] = (dry[k] as number) + back * dull;
      wet[k] = (wet[k] as number) + old;
      if (++at === delay) at = 0;
    }
  }
  // One all-pass thickens the tail (after Schroeder's reverberator, from memory).
  const hold = new Float32Array(Math.max(8, Math.round((room.loops[0]?.delay ?? 200) * 0.17)));
  let at = 0;
  for (let k = 0; k < dry.length; k++) {
    const old = hold[at] as number;
    const x = (wet[k] as number) + 0.6 * old;
    hold[at] = x;
    samples[k] = (dry[k] as number) + room.tailGain * (old - 0.6 * x);
    if (++at === hold.length) at = 0;
  }
  for (const { delay, gain } of room.echoes) {
    for (let k = delay; k < dry.length; k++) {
      samples[k] = (samples[k] as number) + gain * (dry[k - delay] as number);
    }
  }
  return samples;
}
