/** Sounds without an arc: many kinds, half of them switched on and off as an arc would be. */
import type { ForeignOther } from '../world.js';
import { blockCoder, telephone } from './coder.js';
import { rms } from './filters.js';
import { clip, gainControl, toSteps } from './gain.js';
import { sloped } from './noises.js';
import { Random } from './random.js';
import { scaleTo } from './record.js';
import { Microphone, Room } from './room.js';
import { shopNoise, soundKinds, sounds } from './sounds.js';

/** Switches a sound on and off with sharp edges; a faint background or nothing stays. */
function switchOnAndOff(x: Float32Array, rate: number, r: Random): void {
  const n = x.length;
  const background = r.chance(0.3) ? null : sloped(r, rate, n, r.range(0, 1));
  const level = (rms(x) + 1e-9) * r.logRange(0.003, 0.15);
  const ramp = Math.max(1, Math.round(rate * r.logRange(2e-4, 8e-3)));
  const many = r.weighted([
    [1, 0.65],
    [2, 0.25],
    [3, 0.1],
  ]);
  const edges: number[] = [];
  for (let k = 0; k < 2 * many; k++) edges.push(r.range(0.03, 0.97) * n);
  edges.sort((a, b) => a - b);
  // A single burst lasts at least a good part of the recording.
  if (many === 1) {
    edges[0] = r.range(0.05, 0.3) * n;
    edges[1] = r.range(0.6, 0.95) * n;
  }
  for (let i = 0; i < n; i++) {
    let g = 0;
    for (let k = 0; k < edges.length; k += 2) {
      const up = (i - (edges[k] as number)) / ramp;
      const down = ((edges[k + 1] as number) - i) / ramp;
      g = Math.max(g, Math.min(1, Math.max(0, Math.min(up, down))));
    }
    x[i] = (x[i] as number) * g + (background === null ? 0 : level * (background[i] as number));
  }
}

/** Draws one sound without an arc; the same seed gives the same sound. Kinds come in turn. */
export function drawOther(seed: number, durationS = 4): ForeignOther {
  const r = new Random(seed, 'other');
  const count = soundKinds.length;
  const kind = soundKinds[((seed % count) + count) % count] as string;
  const call = r.chance(0.12);
  const rate = call ? 8000 : r.pick([16000, 22050, 44100, 48000]);
  const n = Math.max(1, Math.round(durationS * rate));
  let x = (sounds[kind] as (typeof sounds)[string])(r, rate, n);
  if (kind !== 'silence') {
    if (r.chance(0.5)) switchOnAndOff(x, rate, r);
    if (r.chance(0.75)) x = new Room(r).run(x, rate);
    if (r.chance(0.3)) {
      const shop = shopNoise(r, rate, n);
      const g = (rms(x) + 1e-9) * r.logRange(0.03, 0.5);
      for (let i = 0; i < n; i++) x[i] = (x[i] as number) + g * (shop[i] as number);
    }
    new Microphone(r).run(x, rate);
    scaleTo(x, r.logRange(0.03, 0.95));
    if (r.chance(0.35)) gainControl(x, rate, r);
    if (r.chance(0.25)) {
      clip(x, r.logRange(0.3, 3), r.chance(0.65), rms(x));
      scaleTo(x, r.logRange(0.2, 1));
    }
    if (call) {
      scaleTo(x, r.range(0.2, 0.95));
      telephone(x, rate, r);
    } else if (r.chance(0.25)) blockCoder(x, rate, r);
  }
  toSteps(x, 16);
  for (let i = 0; i < n; i++) if (!Number.isFinite(x[i])) x[i] = 0;
  return { seed, kind, sampleRateHz: rate, samples: x };
}
