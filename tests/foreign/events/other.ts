import type { Condition, ForeignOther } from '../world.js';
import { degrade } from './degrade.js';
import { filter, mix, rms, scale } from './filters.js';
import { Rng } from './rng.js';
import { drawMicrophone, drawRoom, playInRoom } from './room.js';
import { SCENES } from './scenes/list.js';
import { fan, pinkHiss } from './scenes/steady.js';

/**
 * Multiplies by a gate: one to three stretches of sound with edges of 0.1-8 ms, as sharp as an
 * arc's.
 */
function gate(rng: Rng, x: Float32Array, rateHz: number): void {
  const n = x.length;
  const pieces = rng.weighted([
    [1, 65],
    [2, 22],
    [3, 13],
  ] as const);
  const open = new Float32Array(n);
  const part = n / pieces;
  const attack = rng.logRange(0.0001, 0.008) * rateHz;
  const release = rng.logRange(0.0001, 0.03) * rateHz;
  for (let k = 0; k < pieces; k++) {
    const from = Math.floor(part * (k + rng.range(0.08, 0.3)));
    const to = Math.floor(part * (k + rng.range(0.7, 0.97)));
    for (let i = from; i < Math.min(n, to + Math.ceil(release)); i++) {
      open[i] = Math.min(1, (i - from + 1) / attack, Math.max(0, 1 - (i - to) / release));
    }
  }
  const rest = rng.chance(0.4) ? 0 : rng.logRange(0.001, 0.05);
  for (let i = 0; i < n; i++) x[i] = (x[i] as number) * Math.max(rest, open[i] as number);
}

/**
 * Draws a sound in which no arc burns. Kinds come in turn; half of them switch on and off sharply.
 */
export function drawOther(seed: number, durationS = 4): ForeignOther {
  const rng = new Rng(seed, 4211);
  const place = ((seed % SCENES.length) + SCENES.length) % SCENES.length;
  const [kind, scene] = SCENES[place] as (typeof SCENES)[number];
  const call = rng.chance(0.1);
  const rateHz = call ? 8000 : rng.pick([16000, 22050, 44100, 48000]);
  const n = Math.round(durationS * rateHz);
  const dry = scene(rng, n, rateHz);
  if (rng.chance(0.5)) gate(rng, dry, rateHz);
  const large = rng.chance(0.5);
  let x = playInRoom(dry, drawRoom(rng, rateHz, large));
  const quality = call ? 'call' : rng.chance(0.5) ? 'phone' : 'good';
  x = filter(x, drawMicrophone(rng, rateHz, quality));
  if (kind !== 'silence' && rng.chance(0.6)) {
    const under = rng.pick([fan, pinkHiss])(rng, n, rateHz);
    mix(x, under, 0, rms(x) * 10 ** (rng.range(-45, -12) / 20));
  }
  let peak = 0;
  for (const v of x) peak = Math.max(peak, Math.abs(v));
  // silence keeps its level; all else is spread over 25 dB as the recordings of arcs are
  if (kind !== 'silence' && peak > 0) {
    scale(x, Math.min(10 ** (rng.range(-46, -21) / 20) / rms(x), 0.97 / peak));
  }
  const condition: Condition = call
    ? 'lossy'
    : rng.weighted<Condition>([
        ['quiet', 50],
        ['shop', 20],
        ['clipped', 15],
        ['lossy', 15],
      ]);
  const plain = kind === 'silence' && !call;
  const samples = degrade(rng, x, rateHz, plain ? 'quiet' : condition, call);
  return { seed, kind, sampleRateHz: rateHz, samples };
}
