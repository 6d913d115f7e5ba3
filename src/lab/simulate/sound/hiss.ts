import type { Random } from '../../../core/index.js';
import { sampleAt, section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';

/** Turbulence: band-limited noise whose strength follows power and arc voltage (how, is own choice). */
export function hiss(
  run: ArcRun,
  acoustic: AcousticScenario,
  count: number,
  random: Random,
): Float64Array {
  const rateHz = acoustic.rateHz;
  const drive = loudness(run, acoustic, count);
  const band = section('band', rateHz, acoustic.hissHz, acoustic.hissQ);
  const high = section('high', rateHz, 300);
  const low = section('low', rateHz, 350, 0.5);
  const bandGain = acoustic.hissPa / noiseGain(acoustic.hissHz, acoustic.hissQ, rateHz);
  const lowGain = acoustic.rumblePa / Math.sqrt((2 * 350) / rateHz);
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const white = roughNormal(random);
    const noise = bandGain * high.next(band.next(white)) + lowGain * low.next(white);
    out[i] = noise * drive[i]!;
  }
  return out;
}

/** Rms that unit white noise keeps through a band-pass of this centre and Q, nearly. */
export function noiseGain(hz: number, q: number, rateHz: number): number {
  return Math.sqrt(Math.min(0.9, (Math.PI * hz) / (q * rateHz)));
}

/** Strength of the turbulence, 1 at 5 kW and 24 V, smoothed by how fast the plume follows. */
function loudness(run: ArcRun, acoustic: AcousticScenario, count: number): Float64Array {
  const every = 4;
  const rateHz = run.powerRateHz / every;
  const drive = new Float32Array(Math.ceil(run.powerW.length / every));
  for (let k = 0; k < drive.length; k++) {
    const power = run.powerW[k * every]!;
    const current = run.arcCurrentA[k * every]!;
    const volts = current > 1 ? power / current : 0;
    if (volts < 8 || power <= 0) continue;
    const length = Math.exp(acoustic.hissLength * Math.min(0.6, (volts - 24) / 24));
    drive[k] = (power / 5000) ** acoustic.hissPower * length;
  }
  const follow = section('low', rateHz, acoustic.hissFollowHz, 0.6);
  follow.run(drive);
  return sampleAt(drive, rateHz, acoustic.rateHz, count);
}
