import type { ForeignOther } from '../world.js';
import { codeLossy, codeMuLaw, drawCoder } from './coder.js';
import { Dice } from './dice.js';
import { mix, rms } from './filters.js';
import { clip, controlGain, intoRange, quantise } from './level.js';
import { drawMicrophone, hear } from './microphone.js';
import { drawRoom, sendThroughRoom } from './room.js';
import { ROOM_SCENES, SCENES } from './scenes.js';

/** Draws a sound in which no arc burns; the kinds come in turn. */
export function drawOther(seed: number, durationS = 5): ForeignOther {
  const dice = new Dice(seed, 'other');
  const turn = ((seed % SCENES.length) + SCENES.length) % SCENES.length;
  const [kind, scene] = SCENES[turn] as (typeof SCENES)[number];
  const call = dice.chance(0.12);
  const rateHz = call ? 8000 : dice.pick([16000, 22050, 44100, 48000]);
  const length = Math.round(durationS * rateHz);
  const heard = scene(dice, length, rateHz);
  // Half begin and end as sharply as an arc does; some of them more than once.
  if (dice.chance(0.5)) {
    const edges = [0, dice.between(0.08, 0.35), dice.between(0.65, 0.95), 1];
    if (dice.chance(0.25)) {
      const middle = dice.between(0.45, 0.55);
      edges.splice(2, 0, middle - 0.06, middle + 0.02);
    }
    for (let e = 0; e + 1 < edges.length; e += 2) {
      const from = Math.round((edges[e] as number) * length);
      heard.fill(0, from, Math.round((edges[e + 1] as number) * length));
    }
  }
  if (dice.chance(0.6)) sendThroughRoom(drawRoom(dice, rateHz), heard);
  const level = rms(heard);
  if (kind !== 'silence' && dice.chance(0.85)) {
    const under = level * 10 ** (-dice.between(12, 50) / 20);
    mix(heard, dice.pick(ROOM_SCENES)(dice, length, rateHz), under);
  }
  // Some silences are digital, others the noise floor of a recorder.
  if (kind === 'silence' && dice.chance(0.7)) {
    mix(heard, dice.pick(ROOM_SCENES)(dice, length, rateHz), dice.ratio(0.001, 0.02));
  }
  hear(drawMicrophone(dice, rateHz), heard);
  return { seed, kind, sampleRateHz: rateHz, samples: spoil(dice, heard, rateHz, call) };
}

/** Level, and for some gain control, clipping or lossy coding. */
function spoil(dice: Dice, heard: Float32Array, rateHz: number, call: boolean): Float32Array {
  let out = heard;
  const loud = rms(out);
  if (loud > 0.03) {
    intoRange(dice, out);
    const now = rms(out);
    if (dice.chance(0.3)) controlGain(dice, out, rateHz);
    if (dice.chance(0.2)) clip(dice, out, dice.ratio(0.3, 4), now);
    if (dice.chance(0.2) || call) out = codeLossy(out, rateHz, drawCoder(dice, rateHz));
    let peak = 0;
    for (const x of out) peak = Math.max(peak, Math.abs(x));
    if (peak > 1) for (let k = 0; k < out.length; k++) out[k] = (0.99 * (out[k] as number)) / peak;
    if (call) codeMuLaw(out);
  }
  quantise(out, 16);
  return out;
}
