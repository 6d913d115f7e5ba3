import { createRandom } from '../../../core/index.js';
import { makeNoise, type NoiseKind } from '../noise/noise.js';
import { addTo, normalised, rms } from '../noise/noise-tools.js';
import {
  atRate,
  type ClipSpec,
  clip,
  controlGain,
  digitise,
  type GainControlSpec,
  type MicrophoneSpec,
  throughMicrophone,
} from './device.js';
import { section } from './filter.js';
import { type LossySpec, throughLossy } from './lossy.js';
import { inRoom, type RoomSpec } from './room.js';
import { type SuppressSpec, suppressNoise } from './suppress.js';

/** Band in which signal-to-noise is stated, Hz. */
export const SNR_BAND_HZ = [1500, 12000] as const;

/** Everything between the arc's free-air sound and the stored file, in the order it happens. */
export interface SoundChain {
  family: string;
  seed: number;
  room: RoomSpec | null;
  noises: { kind: NoiseKind; share: number }[];
  /** Arc over noises in the 1.5–12 kHz band while the arc burns; null for no noise at all. */
  snrDb: number | null;
  /** Level of the arc before gain control: rms of full scale while it burns, dB. */
  levelDb: number;
  microphone: MicrophoneSpec;
  gainControl: GainControlSpec | null;
  clip: ClipSpec | null;
  suppress: SuppressSpec | null;
  /** Rate of the stored file. */
  outRateHz: number;
  bits: number;
  /** What a lossy file does to it; null for a file that keeps everything. */
  lossy: LossySpec | null;
  /** Name of a real lossy round trip, applied by the `codec` hook. */
  codec: string | null;
}

export interface DegradeOptions {
  /** Where the arc burns, for levels and signal-to-noise. */
  arcOn: readonly { startS: number; endS: number }[];
  /** Lossy round trip; must be given when the chain names a codec. Same rate and length back. */
  codec?: (samples: Float64Array, rateHz: number, codec: string) => Float64Array;
}

/** The sound as stored, full scale 1. An arc that never burns is levelled by the whole sound. */
export function degradeSound(
  pressure: Float64Array,
  rateHz: number,
  chain: SoundChain,
  options: DegradeOptions,
): { samples: Float64Array; rateHz: number } {
  const random = createRandom(chain.seed);
  let samples: Float64Array = new Float64Array(pressure);
  if (chain.room !== null) samples = inRoom(samples, chain.room, random.fork('room'), rateHz);
  addNoises(samples, rateHz, chain, options);
  const level = rmsWhere(samples, rateHz, options.arcOn);
  const gain = level > 0 ? 10 ** (chain.levelDb / 20) / level : 1;
  for (let i = 0; i < samples.length; i++) samples[i]! *= gain;
  throughMicrophone(samples, chain.microphone, random.fork('microphone'), rateHz);
  if (chain.gainControl !== null) controlGain(samples, chain.gainControl, rateHz);
  if (chain.clip !== null) overdrive(samples, rateHz, chain.clip, options);
  if (chain.suppress !== null) samples = suppressNoise(samples, chain.suppress, rateHz);
  let stored = digitise(atRate(samples, rateHz, chain.outRateHz), chain.bits);
  if (chain.lossy) stored = digitise(throughLossy(stored, chain.lossy, chain.outRateHz), 16);
  if (chain.codec !== null && options.codec !== undefined) {
    stored = options.codec(stored, chain.outRateHz, chain.codec);
  }
  return { samples: stored, rateHz: chain.outRateHz };
}

/** Raises the level as far as the clipping asks for, and clips. */
function overdrive(
  samples: Float64Array,
  rateHz: number,
  spec: ClipSpec,
  options: DegradeOptions,
): void {
  const level = rmsWhere(samples, rateHz, options.arcOn);
  if (spec.sigma !== undefined && level > 0) {
    const gain = spec.at / (spec.sigma * level);
    for (let i = 0; i < samples.length; i++) samples[i]! *= gain;
  }
  clip(samples, spec);
}

/** Mixes in the noises so that the stated ratio holds while the arc burns. */
function addNoises(
  samples: Float64Array,
  rateHz: number,
  chain: SoundChain,
  options: DegradeOptions,
): void {
  if (chain.snrDb === null || chain.noises.length === 0) return;
  const random = createRandom(chain.seed).fork('noises');
  const noise = new Float64Array(samples.length);
  for (const [k, { kind, share }] of chain.noises.entries()) {
    addTo(noise, makeNoise(kind, random.fork(`${kind} ${k}`), rateHz, samples.length), share);
  }
  normalised(noise);
  const arcLevel = rmsWhere(inBand(samples, rateHz), rateHz, options.arcOn);
  const noiseLevel = rmsWhere(inBand(noise, rateHz), rateHz, options.arcOn);
  if (!(arcLevel > 0 && noiseLevel > 0)) return;
  // A noise with hardly anything in the band would be raised without bound; it is held to 40 dB over the arc.
  const wanted = (arcLevel / noiseLevel) * 10 ** (-chain.snrDb / 20);
  const most = 100 * rmsWhere(samples, rateHz, options.arcOn);
  addTo(samples, noise, Math.min(wanted, most));
}

/** A copy limited to the band of {@link SNR_BAND_HZ} (to what of it the rate can hold). */
export function inBand(samples: Float64Array, rateHz: number): Float64Array {
  const out = new Float64Array(samples);
  for (const q of [0.5412, 1.3066]) {
    section('high', rateHz, SNR_BAND_HZ[0], q).run(out);
    section('low', rateHz, SNR_BAND_HZ[1], q).run(out);
  }
  return out;
}

function rmsWhere(
  samples: Float64Array,
  rateHz: number,
  spans: readonly { startS: number; endS: number }[],
): number {
  let energy = 0;
  let count = 0;
  for (const { startS, endS } of spans) {
    const from = Math.max(0, Math.floor(startS * rateHz));
    const to = Math.min(samples.length, Math.floor(endS * rateHz));
    if (to <= from) continue;
    energy += rms(samples, from, to) ** 2 * (to - from);
    count += to - from;
  }
  return count > 0 ? Math.sqrt(energy / count) : rms(samples);
}
