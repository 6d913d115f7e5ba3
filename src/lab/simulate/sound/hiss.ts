import type { Random } from '../../../core/index.js';
import { sampleAt, section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import type { EventKind } from './event-kinds.js';
import { flutter } from './flutter.js';
import type { SoundParts } from './sound-parts.js';
import { swells } from './swells.js';

/**
 * Turbulence: band-limited noise whose strength follows power and arc voltage (how, is own choice), flutters, and in
 * some families swells at the events. What a pulse adds over the base current between two pulses, and what
 * an event swells, count as sound of these events.
 */
export function addHiss(
  into: SoundParts,
  run: ArcRun,
  acoustic: AcousticScenario,
  times: Readonly<Record<EventKind, readonly number[]>>,
  random: Random,
): void {
  const { count } = into;
  const { rateHz } = acoustic;
  const noise = turbulence(acoustic, count, random.fork('hiss'));
  const shaken = flutter(count, acoustic.flutter, rateHz, random.fork('flutter'));
  const drive = loudness(run, acoustic, count);
  for (let i = 0; i < count; i++) noise[i]! *= shaken[i]!;
  if (into.apart && run.scenario.source.kind === 'pulsed') {
    const base = lowest(drive, rateHz / run.scenario.source.frequencyHz);
    addProduct(into.rest, noise, base);
    addProduct(into.of('pulse'), noise, drive, base);
  } else addProduct(into.rest, noise, drive);
  if (acoustic.swells === null) return;
  for (let i = 0; i < count; i++) noise[i]! *= drive[i]!;
  const lifts = swells(run, acoustic.swells, times, rateHz, random.fork('swells'));
  for (const [kind, gain] of Object.entries(lifts))
    addProduct(into.of(kind as EventKind), noise, gain);
}

/** Adds `noise·(gain − less)`. */
function addProduct(
  out: Float64Array,
  noise: Float64Array,
  gain: Float64Array,
  less?: Float64Array,
): void {
  if (less === undefined) for (let i = 0; i < out.length; i++) out[i]! += noise[i]! * gain[i]!;
  else for (let i = 0; i < out.length; i++) out[i]! += noise[i]! * (gain[i]! - less[i]!);
}

/** The noise at 5 kW and 24 V, at rest. */
function turbulence(acoustic: AcousticScenario, count: number, random: Random): Float64Array {
  const rateHz = acoustic.rateHz;
  const band = section('band', rateHz, acoustic.hissHz, acoustic.hissQ);
  const high = section('high', rateHz, 300);
  const low = section('low', rateHz, 350, 0.5);
  const bandGain = acoustic.hissPa / noiseGain(acoustic.hissHz, acoustic.hissQ, rateHz);
  const lowGain = acoustic.rumblePa / Math.sqrt((2 * 350) / rateHz);
  const out = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const white = roughNormal(random);
    out[i] = bandGain * high.next(band.next(white)) + lowGain * low.next(white);
  }
  return out;
}

/** Rms that unit white noise keeps through a band-pass of this centre and Q, nearly. */
export function noiseGain(hz: number, q: number, rateHz: number): number {
  return Math.sqrt(Math.min(0.9, (Math.PI * hz) / (q * rateHz)));
}

/** Samples of power between two values of the strength. */
const EVERY = 4;

/** Strength of the turbulence, 1 at 5 kW and 24 V, smoothed by how fast the plume follows. */
function loudness(run: ArcRun, acoustic: AcousticScenario, count: number): Float64Array {
  const rateHz = run.powerRateHz / EVERY;
  const drive = new Float32Array(Math.ceil(run.powerW.length / EVERY));
  for (let k = 0; k < drive.length; k++) {
    const power = run.powerW[k * EVERY]!;
    const current = run.arcCurrentA[k * EVERY]!;
    const volts = current > 1 ? power / current : 0;
    if (volts < 8 || power <= 0) continue;
    const length = acoustic.hissLength * Math.min(0.6, (volts - 24) / 24);
    drive[k] = Math.exp(acoustic.hissPower * Math.log(power / 5000) + length);
  }
  const follow = section('low', rateHz, acoustic.hissFollowHz, 0.6);
  follow.run(drive);
  return sampleAt(drive, rateHz, acoustic.rateHz, count);
}

/** The lowest value within half a `span` of samples on either side, by blocks of that length. */
function lowest(values: Float64Array, span: number): Float64Array {
  const block = Math.max(1, Math.round(span / 2));
  const blocks = Math.ceil(values.length / block);
  const least = new Float64Array(blocks).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i < values.length; i++) {
    const b = Math.floor(i / block);
    if (values[i]! < least[b]!) least[b] = values[i]!;
  }
  const out = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) {
    const b = Math.floor(i / block);
    out[i] = Math.min(least[b]!, least[b - 1] ?? least[b]!, least[b + 1] ?? least[b]!);
  }
  return out;
}
