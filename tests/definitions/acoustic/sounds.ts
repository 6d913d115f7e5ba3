import { createRandom } from '../../../src/core/index.js';

/** Sounds with known properties, made from mathematics alone. */

/** White noise of rms `level`, seeded. */
export function whiteNoise(rateHz: number, seconds: number, level = 0.1, seed = 440): Float64Array {
  const random = createRandom(seed);
  return Float64Array.from({ length: Math.round(rateHz * seconds) }, () => random.normal(0, level));
}

/** White noise whose amplitude is `1 + depth·cos(2π·beatHz·t)`. */
export function beatingNoise(
  rateHz: number,
  seconds: number,
  beatHz: number,
  depth: number,
  seed = 440,
): Float64Array {
  return whiteNoise(rateHz, seconds, 0.1, seed).map(
    (value, i) => value * (1 + depth * Math.cos((2 * Math.PI * beatHz * i) / rateHz)),
  );
}

export function sine(
  rateHz: number,
  seconds: number,
  frequencyHz: number,
  amplitude = 0.1,
): Float64Array {
  return Float64Array.from(
    { length: Math.round(rateHz * seconds) },
    (_, i) => amplitude * Math.sin((2 * Math.PI * frequencyHz * i) / rateHz),
  );
}

/** Bursts of noise that leap up and die away within a millisecond, at the given times, over faint hiss. */
export function cracks(
  rateHz: number,
  seconds: number,
  timesS: readonly number[],
  seed = 440,
): Float64Array {
  const random = createRandom(seed);
  const out = whiteNoise(rateHz, seconds, 0.003, seed + 1);
  const decay = 0.0005 * rateHz;
  for (const timeS of timesS) {
    const start = Math.round(timeS * rateHz);
    for (let i = 0; i < 6 * decay && start + i < out.length; i++)
      out[start + i] = out[start + i]! + 0.2 * random.normal() * Math.exp(-i / decay);
  }
  return out;
}
