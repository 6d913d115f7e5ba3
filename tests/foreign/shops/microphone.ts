import { codeLossy } from './coder.js';
import { filter, type Line } from './filters.js';
import type { Microphone } from './gear.js';

/** The linear part of a microphone: its edges and its own colour. */
export function hear(x: Line, mic: Microphone, rateHz: number): Line {
  filter(x, 'high', mic.lowHz, 0.7, rateHz);
  if (mic.highHz < 0.45 * rateHz) filter(x, 'low', mic.highHz, 0.7, rateHz);
  const r = mic.resonance;
  if (r !== null && r.hz < 0.45 * rateHz) filter(x, 'bell', r.hz, r.q, rateHz, r.gainDb);
  return x;
}

/** A phone's gain control: follows the level, loud in quiet and quiet in loud, then clips hard. */
function controlGain(
  x: Line,
  control: NonNullable<Microphone['gainControl']>,
  rateHz: number,
): void {
  const rise = 1 / (control.attackS * rateHz);
  const fall = 1 / (control.releaseS * rateHz);
  const wanted = 0.16; // about -16 dB under full scale; own choice
  const top = control.clipAt * wanted;
  let power = 1e-4;
  for (let n = 0; n < x.length; n++) {
    const v = x[n] ?? 0;
    const square = v * v;
    power += (square > power ? rise : fall) * (square - power);
    // at most 30 dB of lift; own choice
    const gain = Math.min(30, wanted / Math.sqrt(power + 1e-9));
    x[n] = Math.max(-top, Math.min(top, gain * v));
  }
}

/** What the file holds: gain control, coder, full scale and 16 bits, in this order.
 * `volume` is what a phone makes of it when the file is saved; others leave it at one. */
export function writeDown(linear: Line, mic: Microphone, rateHz: number, volume: number): Line {
  let x = Float32Array.from(linear);
  if (mic.gainControl !== null) {
    controlGain(x, mic.gainControl, rateHz);
    for (let n = 0; n < x.length; n++) x[n] = volume * (x[n] ?? 0);
  }
  if (mic.coder !== null) x = codeLossy(x, mic.coder.topHz, mic.coder.noiseDb, rateHz);
  for (let n = 0; n < x.length; n++) {
    const v = Math.max(-1, Math.min(1, x[n] ?? 0));
    x[n] = Math.round(v * 32767) / 32767;
  }
  return x;
}
