/** Recordings of an arc: room, microphone, background, then whatever the recorder does to the signal. */
import type { Condition, EventKind, ForeignArc, ForeignRecording } from '../world.js';
import { blockCoder, telephone } from './coder.js';
import { resample, rms } from './filters.js';
import { clip, gainControl, toSteps } from './gain.js';
import { sloped } from './noises.js';
import { Random } from './random.js';
import { Microphone, Room } from './room.js';
import { shopNoise, soundKinds, sounds } from './sounds.js';

const KINDS: readonly EventKind[] = ['short', 'reignition', 'drop', 'pulse'];

/** How far the arc stands over the background, dB. */
function overBackgroundDb(condition: Condition, r: Random): number {
  switch (condition) {
    case 'quiet':
      return r.range(26, 50);
    case 'shop':
      return r.range(7, 13);
    case 'loud-shop':
      return r.range(-2.5, 2.5);
    default:
      return r.range(14, 38);
  }
}

/** Records an arc under a condition; the same seed gives the same recording. */
export function record(arc: ForeignArc, condition: Condition, seed: number): ForeignRecording {
  const r = new Random(seed, `record ${condition} ${arc.seed}`);
  const call = condition === 'lossy' && r.chance(0.5);
  const rate = call ? 8000 : r.pick([16000, 22050, 44100, 44100, 48000, 48000]);
  const open = condition === 'open-ended';
  const before = open ? 0 : Math.round(r.range(0.4, 1.6) * rate);
  const after = open ? 0 : Math.round(r.range(0.4, 1.6) * rate);
  const room = new Room(r);
  const mic = new Microphone(r);
  // Open-ended: only the dying end is cut, so that event times of the arc stay those of the recording.
  const lost = open ? Math.round(0.05 * rate) : 0;
  let length = 0;
  const through = (x: Float32Array): Float32Array => {
    const at = resample(x, arc.dry.sampleRateHz, rate);
    length = at.length - lost;
    const padded = new Float32Array(before + length + after);
    if (open) {
      padded.set(room.run(at, rate).subarray(0, length));
      return micOnce(padded);
    }
    padded.set(at, before);
    return micOnce(room.run(padded, rate));
  };
  const micOnce = (x: Float32Array): Float32Array => mic.run(x, rate);
  const rest = through(arc.dry.hiss);
  const n = rest.length;
  const events = {} as Record<EventKind, Float32Array>;
  for (const k of KINDS) {
    events[k] = arc.truth.eventsS[k].length > 0 ? through(arc.dry.events[k]) : new Float32Array(n);
  }
  const end = before + length;

  // The arc's own level sets the scale of everything else.
  const sum = rest.slice();
  for (const k of KINDS) {
    const e = events[k];
    for (let i = 0; i < n; i++) sum[i] = (sum[i] as number) + (e[i] as number);
  }
  const arcLevel = rms(sum, before, end) + 1e-12;
  const calm = condition === 'quiet' || r.chance(0.3);
  const noise = calm ? sloped(r, rate, n, r.range(0, 1.2)) : shopNoise(r, rate, n);
  const noiseGain = arcLevel * 10 ** (-overBackgroundDb(condition, r) / 20);
  if (condition === 'switched') {
    // Hard cuts: nothing, or another scene, before and after; the arc's own tail ends at the cut.
    const scene = r.chance(0.5)
      ? null
      : (sounds[r.pick(soundKinds)] as (typeof sounds)[string])(r, rate, n);
    const g = arcLevel * r.logRange(0.05, 1.2);
    for (let i = 0; i < n; i++) {
      const inside = i >= before && i < end;
      if (!inside) for (const k of KINDS) events[k][i] = 0;
      rest[i] = inside
        ? (rest[i] as number) + noiseGain * (noise[i] as number)
        : scene === null
          ? 0
          : g * (scene[i] as number);
    }
  } else {
    for (let i = 0; i < n; i++) rest[i] = (rest[i] as number) + noiseGain * (noise[i] as number);
  }
  // Level: loud arcs fill the scale, low ones a hundredth of it; it carries no meaning.
  let peak = 1e-12;
  for (let i = 0; i < n; i++) {
    let s = rest[i] as number;
    for (const k of KINDS) s += events[k][i] as number;
    sum[i] = s;
    peak = Math.max(peak, Math.abs(s));
  }
  const gain = r.logRange(0.03, 0.95) / peak;
  for (const x of [sum, rest, ...KINDS.map((k) => events[k])]) {
    for (let i = 0; i < n; i++) x[i] = (x[i] as number) * gain;
  }
  const samples = sum;
  distort(samples, rate, condition, call, before, end, r);
  for (let i = 0; i < n; i++) if (!Number.isFinite(samples[i])) samples[i] = 0;
  return {
    sampleRateHz: rate,
    samples,
    arcStartS: before / rate,
    arcEndS: end / rate,
    linear: { events, rest },
  };
}

/** Everything that is not linear, in place. */
function distort(
  x: Float32Array,
  rate: number,
  condition: Condition,
  call: boolean,
  from: number,
  to: number,
  r: Random,
): void {
  const phone = condition === 'clipped';
  if (phone || call || r.chance(condition === 'quiet' ? 0.1 : 0.3)) gainControl(x, rate, r);
  if (phone) {
    clip(x, r.logRange(0.3, 3), r.chance(0.65), rms(x, from, to));
    scaleTo(x, r.logRange(0.2, 1));
  }
  if (condition === 'lossy') {
    scaleTo(x, r.range(0.2, 0.95));
    if (call) {
      if (r.chance(0.6)) telephone(x, rate, r);
      else {
        blockCoder(x, rate, r);
        if (r.chance(0.5)) telephone(x, rate, r);
      }
    } else {
      blockCoder(x, rate, r);
      if (r.chance(0.3)) blockCoder(x, rate, r); // sent on once more
    }
  } else if ((condition === 'switched' || condition === 'open-ended') && r.chance(0.25)) {
    if (r.chance(0.5)) blockCoder(x, rate, r);
    else clip(x, r.range(1.5, 4), r.chance(0.5), rms(x, from, to));
  }
  toSteps(x, 16);
}

/** Brings the peak to a value. */
export function scaleTo(x: Float32Array, top: number): void {
  let peak = 1e-12;
  for (let i = 0; i < x.length; i++) peak = Math.max(peak, Math.abs(x[i] as number));
  for (let i = 0; i < x.length; i++) x[i] = ((x[i] as number) * top) / peak;
}
