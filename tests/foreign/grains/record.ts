import type { Condition, EventKind, ForeignArc, ForeignRecording } from '../world.js';
import { codeLossy, codeMuLaw, drawCoder } from './coder.js';
import { Dice } from './dice.js';
import { mix, rms, scale } from './filters.js';
import { clip, controlGain, intoRange, quantise } from './level.js';
import { drawMicrophone, drawTelephone, hear } from './microphone.js';
import { resample } from './resample.js';
import { drawRoom, sendThroughRoom } from './room.js';
import { white } from './scene.js';
import { ROOM_SCENES, SHOP_SCENES } from './scenes.js';

const KINDS: readonly EventKind[] = ['short', 'reignition', 'drop', 'pulse'];

/**
 * How far the arc stands over the background, dB, least and most. All own choice but "shop" and
 * "loud-shop".
 */
const OVER_DB: Record<Condition, readonly [number, number]> = {
  quiet: [26, 48],
  shop: [7, 13],
  'loud-shop': [-2.5, 3],
  clipped: [10, 40],
  lossy: [10, 40],
  'open-ended': [8, 45],
  switched: [12, 50],
};

/** A background of one to three scenes at an effective value of 1. */
function drawBackground(dice: Dice, condition: Condition, length: number, rateHz: number) {
  const shop =
    condition === 'shop' ||
    condition === 'loud-shop' ||
    (condition !== 'quiet' && dice.chance(0.5));
  const out = new Float32Array(length);
  const count = shop ? dice.whole(1, 2) : 1;
  for (let k = 0; k < count; k++) {
    const scene = dice.pick(shop ? SHOP_SCENES : ROOM_SCENES)(dice, length, rateHz);
    mix(out, scene, dice.ratio(0.3, 1));
  }
  mix(out, dice.pick(ROOM_SCENES)(dice, length, rateHz), dice.ratio(0.03, 0.4));
  return scale(out, 1 / Math.max(1e-9, rms(out)));
}

function drawRate(dice: Dice, condition: Condition): { rateHz: number; call: boolean } {
  const call = condition === 'lossy' && dice.chance(0.45);
  return { rateHz: call ? 8000 : dice.pick([16000, 22050, 44100, 48000]), call };
}

/** Gaps before and after the arc, s. */
function drawGaps(dice: Dice, condition: Condition): [number, number] {
  if (condition === 'open-ended') return [0, 0];
  return [dice.between(0.4, 1.8), dice.between(0.4, 1.5)];
}

/** Records an arc under a condition. The same arc, condition and seed give the same recording. */
export function record(arc: ForeignArc, condition: Condition, seed: number): ForeignRecording {
  const dice = new Dice(seed, `record ${condition} ${arc.seed}`);
  const { rateHz, call } = drawRate(dice, condition);
  const [beforeS, afterS] = drawGaps(dice, condition);
  const at = Math.round(beforeS * rateHz);
  const arcLength = Math.round(arc.durationS * rateHz);
  const length = at + arcLength + Math.round(afterS * rateHz);
  const room = drawRoom(dice, rateHz);
  const microphone = drawMicrophone(dice, rateHz);
  const telephone = call ? drawTelephone(dice, rateHz) : null;

  // Each part goes alone through rate, room and microphone; a part without events stays silent.
  const send = (dry: Float32Array): Float32Array => {
    const out = new Float32Array(length);
    if (dry.every((x) => x === 0)) return out;
    const near = resample(dry, arc.dry.sampleRateHz, rateHz);
    const heard = new Float32Array(Math.min(length - at, near.length + room.reach));
    heard.set(near.subarray(0, heard.length));
    sendThroughRoom(room, heard);
    hear(microphone, heard);
    if (telephone) hear(telephone, heard);
    mix(out, heard, 1, at);
    return out;
  };
  const events = {} as Record<EventKind, Float32Array>;
  for (const kind of KINDS) events[kind] = send(arc.dry.events[kind]);
  const rest = send(arc.dry.hiss);
  const level = (): number => {
    const total = rest.slice();
    for (const kind of KINDS) mix(total, events[kind]);
    return rms(total, at, at + arcLength);
  };
  const arcLevel = level();

  // Background: through the microphone, at a drawn distance below the arc.
  const [least, most] = OVER_DB[condition];
  const background = hear(microphone, drawBackground(dice, condition, length, rateHz));
  if (telephone) hear(telephone, background);
  const behind = arcLevel * 10 ** (-dice.between(least, most) / 20);
  const backGain = behind / Math.max(1e-9, rms(background));
  if (condition === 'switched') {
    // Another scene, or nothing at all, outside the arc: joined without a fade.
    const parts = [...Object.values(events), rest];
    const end = at + arcLength;
    for (const part of parts) part.fill(0, end);
    mix(rest, background.subarray(at, end), backGain, at);
    if (dice.chance(0.6)) {
      const other = hear(microphone, drawBackground(dice, 'shop', length, rateHz));
      const gain = (arcLevel * dice.ratio(0.05, 1)) / Math.max(1e-9, rms(other));
      mix(rest, other.subarray(0, at), gain, 0);
      mix(rest, other.subarray(end), gain, end);
    }
  } else {
    mix(rest, background, backGain);
    mix(rest, white(dice, length), arcLevel * 10 ** (-dice.between(45, 70) / 20));
  }

  const sum = rest.slice();
  for (const kind of KINDS) mix(sum, events[kind]);
  const gain = intoRange(dice, sum);
  for (const part of [...Object.values(events), rest]) scale(part, gain);
  const samples = distort(dice, condition, call, sum, rateHz, at, at + arcLength);
  return {
    sampleRateHz: rateHz,
    samples,
    arcStartS: at / rateHz,
    arcEndS: (at + arcLength) / rateHz,
    linear: { events, rest },
  };
}

/** What a recorder does that is not linear. */
function distort(
  dice: Dice,
  condition: Condition,
  call: boolean,
  sum: Float32Array,
  rateHz: number,
  from: number,
  to: number,
): Float32Array {
  let out = sum;
  const clipAt = (sigma: number): void => clip(dice, out, sigma, rms(out, from, to));
  if (condition === 'clipped') {
    if (dice.chance(0.7)) controlGain(dice, out, rateHz);
    clipAt(dice.ratio(0.3, 3));
  } else if (condition === 'lossy') {
    if (dice.chance(0.4)) controlGain(dice, out, rateHz);
    if (dice.chance(0.15)) clipAt(dice.ratio(1, 4));
    if (!call || dice.chance(0.6)) out = codeLossy(out, rateHz, drawCoder(dice, rateHz));
    if (call) {
      intoRange(dice, out);
      codeMuLaw(out);
    }
  } else if (condition === 'open-ended' || condition === 'switched') {
    const how = dice.next();
    if (how < 0.2) controlGain(dice, out, rateHz);
    else if (how < 0.3) clipAt(dice.ratio(1, 4));
    else if (how < 0.4) out = codeLossy(out, rateHz, drawCoder(dice, rateHz));
  } else if (dice.chance(0.12)) {
    controlGain(dice, out, rateHz);
  }
  let peak = 0;
  for (const x of out) peak = Math.max(peak, Math.abs(x));
  if (peak > 1) scale(out, 0.99 / peak);
  quantise(out, 16);
  return out;
}
