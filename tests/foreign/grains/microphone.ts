import type { Dice } from './dice.js';
import { Biquad } from './filters.js';

/** A microphone's response: makes a fresh chain of filters, at rest, for each sound. */
export type Microphone = () => Biquad[];

/** Draws a response: a lower and an upper limit and up to three humps (own choice). */
export function drawMicrophone(dice: Dice, rateHz: number): Microphone {
  const lowHz = dice.ratio(25, 220);
  const highHz = dice.ratio(6000, 20000);
  const humps = Array.from({ length: dice.whole(0, 3) }, () => ({
    hz: dice.ratio(250, 9000),
    q: dice.ratio(0.5, 3),
    db: dice.between(-7, 7),
  }));
  return () => {
    const chain = [Biquad.high(lowHz, rateHz)];
    if (highHz < 0.45 * rateHz) chain.push(Biquad.low(highHz, rateHz));
    for (const { hz, q, db } of humps) {
      if (hz < 0.42 * rateHz) chain.push(Biquad.bell(hz, rateHz, q, db));
    }
    return chain;
  };
}

/** Draws a telephone's band, about 300-3400 Hz. */
export function drawTelephone(dice: Dice, rateHz: number): Microphone {
  const lowHz = dice.between(200, 350);
  const highHz = Math.min(0.44 * rateHz, dice.between(3000, 3500));
  return () => [
    Biquad.high(lowHz, rateHz),
    Biquad.high(lowHz, rateHz),
    Biquad.low(highHz, rateHz),
    Biquad.low(highHz, rateHz),
  ];
}

/** Sends a sound through a response, in place. */
export function hear(microphone: Microphone, samples: Float32Array): Float32Array {
  for (const filter of microphone()) filter.run(samples);
  return samples;
}
