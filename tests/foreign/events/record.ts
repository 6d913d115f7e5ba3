import type { Condition, EventKind, ForeignArc, ForeignRecording } from '../world.js';
import { degrade } from './degrade.js';
import { mix, resample, rms, scale, typicalLevel, white } from './filters.js';
import { Rng } from './rng.js';
import { drawMicrophone, drawRoom, pickUp } from './room.js';
import { level } from './scenes/kit.js';
import { SCENES, shopNoise } from './scenes/list.js';
import { fan, pinkHiss } from './scenes/steady.js';

const KINDS: readonly EventKind[] = ['short', 'reignition', 'drop', 'pulse'];

/**
 * Arc (its level most of the time) over background, dB, lowest and highest (shop and loud shop: as
 * the conditions say; others own choice).
 */
const OVER_DB: Record<Condition, readonly [number, number]> = {
  quiet: [28, 45],
  shop: [7, 13],
  'loud-shop': [-3, 3],
  clipped: [12, 35],
  lossy: [10, 35],
  'open-ended': [10, 35],
  switched: [15, 40],
};

/**
 * Records an arc. The direct sound has no delay, so an event of the arc lies at `arcStartS` plus
 * its time. An
 * open-ended recording begins with the first sample of the arc and ends up to 0.1 s before its
 * last.
 */
export function record(arc: ForeignArc, condition: Condition, seed: number): ForeignRecording {
  const rng = new Rng(seed ^ Math.imul(arc.seed + 11, 0x9e3779b1), condition.length * 31 + 5);
  const call = condition === 'lossy' && rng.chance(0.5);
  const rateHz = call ? 8000 : rng.pick([16000, 22050, 44100, 48000]);
  const open = condition === 'open-ended';
  const beforeS = open ? 0 : rng.range(0.4, 1.6);
  const afterS = open ? 0 : rng.range(0.3, 1.2);
  const shownS = open ? arc.durationS - rng.range(0.03, 0.1) : arc.durationS;
  const from = Math.round(beforeS * rateHz);
  const arcLength = Math.floor(shownS * rateHz);
  const n = from + arcLength + Math.round(afterS * rateHz);
  const to = from + arcLength;

  const noisy = condition === 'shop' || condition === 'loud-shop' || rng.chance(0.3);
  const room = drawRoom(rng, rateHz, noisy && condition !== 'quiet');
  const phone = condition === 'clipped' || condition === 'lossy' || rng.chance(0.4);
  const quality = call ? 'call' : phone && condition !== 'quiet' ? 'phone' : 'good';
  const microphone = drawMicrophone(rng, rateHz, quality);
  const take = (dry: Float32Array): Float32Array => {
    const out = new Float32Array(n);
    if (dry.every((v) => v === 0)) return out;
    const atRate = resample(dry, arc.dry.sampleRateHz, rateHz);
    mix(out, atRate.subarray(0, Math.min(atRate.length, arcLength)), from);
    const heard = pickUp(out, room, microphone);
    // a recording that is switched is cut hard, tail and all
    if (condition === 'switched') heard.fill(0, to);
    return heard;
  };
  const events = {} as Record<EventKind, Float32Array>;
  for (const kind of KINDS) events[kind] = take(arc.dry.events[kind]);
  const rest = take(arc.dry.hiss);

  const sum = rest.slice();
  for (const kind of KINDS) mix(sum, events[kind]);
  const arcRms = typicalLevel(sum, rateHz, from, to);
  const noise = background(rng, condition, n, rateHz, noisy);
  const [lo, hi] = OVER_DB[condition];
  scale(noise, (arcRms * 10 ** (-rng.range(lo, hi) / 20)) / Math.max(1e-9, rms(noise, from, to)));
  if (condition === 'switched') switchScene(rng, noise, from, to, rateHz, arcRms);
  mix(rest, noise);
  mix(sum, noise);

  let peak = 0;
  for (const v of sum) peak = Math.max(peak, Math.abs(v));
  // level carries no meaning: 25 dB of spread, whatever the mode
  const gain = Math.min(
    10 ** (rng.range(-46, -21) / 20) / typicalLevel(sum, rateHz, from, to),
    0.97 / peak,
  );
  scale(sum, gain);
  scale(rest, gain);
  for (const kind of KINDS) scale(events[kind], gain);
  const samples = degrade(rng, sum, rateHz, condition, call);
  return {
    sampleRateHz: rateHz,
    samples,
    arcStartS: from / rateHz,
    arcEndS: to / rateHz,
    linear: { events, rest },
  };
}

/** What is heard besides the arc: a still room or a workshop, and the noise of the recorder. */
function background(
  rng: Rng,
  condition: Condition,
  n: number,
  rateHz: number,
  noisy: boolean,
): Float32Array {
  const shop = condition !== 'quiet' && noisy;
  const noise = shop ? shopNoise(rng, n, rateHz) : rng.pick([fan, pinkHiss])(rng, n, rateHz);
  return mix(level(noise), white(rng, n), 0, 0.05);
}

/** Puts digital silence or another scene before and after the arc, with an edge of one sample. */
function switchScene(
  rng: Rng,
  noise: Float32Array,
  from: number,
  to: number,
  rateHz: number,
  arcRms: number,
): void {
  for (const [a, b] of [
    [0, from],
    [to, noise.length],
  ] as const) {
    noise.fill(0, a, b);
    if (rng.chance(0.4)) continue;
    const [, scene] = rng.pick(SCENES);
    const other = scene(rng, b - a, rateHz);
    mix(noise, other, a, arcRms * 10 ** (rng.range(-25, 3) / 20));
  }
}
