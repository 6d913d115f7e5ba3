import { TRACE_HZ } from './current.js';
import { filter, rms, scale, section, wander, white } from './filters.js';
import type { Rng } from './rng.js';
import type { Trace } from './trace.js';
import { place, renderVoice, SOUND_HZ, type Voice } from './wavelet.js';

/**
 * The bed under the events: turbulent gas and plasma, spatter, the mains in the arc. Spectrum,
 * level, wander,
 * spatter and how far the bed follows power and length of the arc come from one distribution for
 * all modes
 * (all own choice). Only the power and the length themselves differ, and those are physics.
 */
export function drawHiss(rng: Rng, trace: Trace, durationS: number, voice: Voice): Float32Array {
  const n = Math.round(durationS * SOUND_HZ);
  const bed = white(rng, n);
  const shape = [
    section('highpass', rng.logRange(150, 900), rng.range(0.5, 0.9), SOUND_HZ),
    section('lowpass', rng.logRange(2800, 16000), rng.range(0.5, 0.8), SOUND_HZ),
  ];
  const humps = rng.int(1, 4);
  for (let k = 0; k < humps; k++) {
    const hz = rng.logRange(500, 12000);
    shape.push(section('peak', hz, rng.range(0.5, 2.5), SOUND_HZ, rng.range(-8, 9)));
  }
  filter(bed, shape);
  // a tilt: part of the bed goes through a one-pole low-pass
  const tilt = rng.range(0, 0.95);
  let low = 0;
  for (let i = 0; i < n; i++) {
    low += 0.12 * ((bed[i] as number) - low);
    bed[i] = (1 - tilt) * (bed[i] as number) + tilt * 2 * low;
  }
  scale(bed, 1 / rms(bed));

  const follow = rng.chance(0.5) ? 0 : rng.range(0, 0.6);
  const stretch = rng.chance(0.3) ? 0 : rng.range(0.3, 2);
  const wanderDb = rng.range(0, 2.5);
  const slow = wander(rng, n, rng.logRange(0.3, 3), SOUND_HZ);
  // gas streams before the arc is hot: the bed has a share that does not need the arc
  const gasShare = rng.range(0.05, 0.3);
  const { voltageV, currentA, lengthRel } = trace;
  let mean = 0;
  for (let i = 0; i < voltageV.length; i += 8) {
    mean += (voltageV[i] as number) * (currentA[i] as number);
  }
  mean /= voltageV.length / 8;
  let gate = 0;
  let wanted = 0;
  const lag = 1 - Math.exp(-4 / (SOUND_HZ * rng.logRange(0.0003, 0.003)));
  for (let i = 0; i < n; i++) {
    if (i % 4 === 0) {
      const k = Math.min(voltageV.length - 1, Math.floor((i * TRACE_HZ) / SOUND_HZ));
      const watts = (voltageV[k] as number) * (currentA[k] as number);
      const lit = currentA[k] as number;
      wanted =
        gasShare +
        (1 - gasShare) *
          (lit > 1 ? 1 : 0) *
          (Math.max(0.02, watts) / mean) ** follow *
          Math.max(0.2, lengthRel[k] as number) ** stretch;
      gate += lag * (Math.min(wanted, 4) - gate);
    }
    bed[i] = (bed[i] as number) * gate * 10 ** ((wanderDb * (slow[i] as number)) / 20);
  }
  // however power and length shape the bed, its level is the same for all modes
  scale(bed, 1 / rms(bed, Math.min(n >> 1, SOUND_HZ), n));
  addSpatter(rng, bed, voice, durationS);
  return bed;
}

/**
 * Spatter and crackle beside the transfer: clicks at random times, 0 to 25 a second in any mode.
 */
function addSpatter(rng: Rng, bed: Float32Array, voice: Voice, durationS: number): void {
  const perS = rng.chance(0.3) ? 0 : rng.logRange(0.5, 25);
  const size = rng.logRange(0.3, 2);
  const shapes = Array.from({ length: 6 }, () => renderVoice(rng, voice));
  let t = 0;
  while (perS > 0) {
    t -= Math.log(1 - rng.next()) / perS;
    if (t > durationS - 0.02) break;
    place(bed, rng.pick(shapes), t, size * rng.spread(0.8) * (rng.chance(0.5) ? 1 : -1));
  }
}
