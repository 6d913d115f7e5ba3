import type { Random } from '../../../core/index.js';
import { sampleAt, section, smooth } from './filter.js';

/** Microphone and its amplifier. */
export interface MicrophoneSpec {
  lowCutHz: number;
  highCutHz: number;
  peaks: { hz: number; q: number; gainDb: number }[];
  /** Own noise, full scale 1 after gain. */
  noise: number;
}

export interface GainControlSpec {
  attackS: number;
  releaseS: number;
  /** Level it steers to, dB of full scale. */
  targetDb: number;
  maxGainDb: number;
}

export interface ClipSpec {
  kind: 'hard' | 'soft';
  /** Where it bends or cuts, full scale 1. */
  at: number;
  /** How many times the rms while the arc burns `at` is; the level is changed to make it so. Left as it is when absent. */
  sigma?: number;
}

/** Response and noise of the microphone, in place. */
export function throughMicrophone(
  samples: Float64Array,
  spec: MicrophoneSpec,
  random: Random,
  rateHz: number,
): Float64Array {
  section('high', rateHz, spec.lowCutHz).run(samples);
  for (const peak of spec.peaks) {
    if (peak.hz < 0.4 * rateHz) section('peak', rateHz, peak.hz, peak.q, peak.gainDb).run(samples);
  }
  if (spec.highCutHz < 0.45 * rateHz) smooth(samples, rateHz, spec.highCutHz);
  for (let i = 0; i < samples.length; i++) samples[i]! += spec.noise * (2 * random.next() - 1);
  return samples;
}

/** Feed-forward gain control in place: quick to duck, slow to recover. */
export function controlGain(
  samples: Float64Array,
  spec: GainControlSpec,
  rateHz: number,
): Float64Array {
  const every = 16;
  const attack = 1 - Math.exp(-every / (spec.attackS * rateHz));
  const release = 1 - Math.exp(-every / (spec.releaseS * rateHz));
  const target = 10 ** (spec.targetDb / 20);
  const most = 10 ** (spec.maxGainDb / 20);
  let level = target / most;
  let gain = most;
  for (let at = 0; at < samples.length; at += every) {
    const end = Math.min(samples.length, at + every);
    let peak = 0;
    for (let i = at; i < end; i++) peak = Math.max(peak, Math.abs(samples[i]!));
    level += (peak > level ? attack : release) * (peak - level);
    const wanted = Math.min(most, target / (level + 1e-9));
    const step = (wanted - gain) / every;
    for (let i = at; i < end; i++) {
      gain += step;
      samples[i]! *= gain;
    }
    gain = wanted;
  }
  return samples;
}

/** Cuts at the rails, or bends towards them, in place; `sigma` is up to the caller. */
export function clip(samples: Float64Array, spec: ClipSpec): Float64Array {
  for (let i = 0; i < samples.length; i++) {
    const x = samples[i]! / spec.at;
    samples[i] = spec.at * (spec.kind === 'soft' ? Math.tanh(x) : Math.max(-1, Math.min(1, x)));
  }
  return samples;
}

/** The same sound at another rate. */
export function atRate(samples: Float64Array, fromHz: number, toHz: number): Float64Array {
  if (fromHz === toHz) return samples;
  const limited = new Float64Array(samples);
  const corner = 0.43 * Math.min(fromHz, toHz);
  smooth(smooth(limited, fromHz, corner), fromHz, corner);
  return sampleAt(limited, fromHz, toHz, Math.floor((samples.length * toHz) / fromHz));
}

/** Rounds to whole steps of a converter and holds to its range, in place. */
export function digitise(samples: Float64Array, bits: number): Float64Array {
  const steps = 2 ** (bits - 1);
  for (let i = 0; i < samples.length; i++) {
    const k = Math.round(samples[i]! * steps);
    samples[i] = Math.max(-steps, Math.min(steps - 1, k)) / steps;
  }
  return samples;
}
