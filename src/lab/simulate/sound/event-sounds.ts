import type { Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import type { ArcRun, DropTruth } from '../run.js';
import { burst } from './crackle.js';
import type { EventKind } from './event-kinds.js';
import type { EventSoundSpec } from './event-sound-spec.js';
import { electricalStrength } from './event-strength.js';
import { noiseGain } from './hiss.js';
import type { SoundParts } from './sound-parts.js';

/**
 * Sounds of the events themselves, apart from the change of arc power: a drop that leaves or falls in puffs,
 * thumps or bursts; where an arc strikes anew or a pulse rises there is a crack, by how steeply the power
 * rises. How they sound is own choice, kept wide: no measurement of a single drop's sound was at hand.
 */
export function addVoices(
  into: SoundParts,
  run: ArcRun,
  spec: EventSoundSpec,
  times: Readonly<Record<EventKind, readonly number[]>>,
  rateHz: number,
  random: Random,
): void {
  const wire = run.scenario.wire.diameterMm;
  for (const drop of spec.dropPa > 0 ? run.truth.drops : []) {
    if (random.next() > spec.dropShare) continue;
    const size = (drop.diameterMm / wire) ** spec.dropPower;
    const peakPa = spec.dropPa * size * Math.exp(spec.dropSpread * random.normal());
    speakDrop(into.of('drop'), rateHz, drop, peakPa, spec, random);
  }
  if (spec.crackPa === 0) return;
  for (const kind of ['reignition', 'pulse'] as const)
    for (const timeS of times[kind]) {
      const force = electricalStrength(run, timeS) ** spec.crackPower;
      const peakPa = spec.crackPa * force * Math.exp(spec.crackSpread * random.normal());
      crack(into.of(kind), rateHz, timeS, peakPa, spec, random);
    }
}

function speakDrop(
  out: Float64Array,
  rateHz: number,
  drop: DropTruth,
  peakPa: number,
  spec: EventSoundSpec,
  random: Random,
): void {
  const at = drop.timeS + random.uniform(0, spec.dropLagS);
  puff(out, rateHz, at, peakPa, spec, random);
  thump(out, rateHz, at, peakPa * spec.thumpShare, spec, random);
  if (random.next() < spec.burstShare) {
    const late = at + Math.abs(0.008 * random.normal());
    burst(out, rateHz, late, 2 * peakPa * Math.exp(0.8 * random.normal()), 2.5e-4, random);
  }
}

/** A breath of coloured noise that swells and dies away. */
function puff(
  out: Float64Array,
  rateHz: number,
  timeS: number,
  peakPa: number,
  spec: EventSoundSpec,
  random: Random,
): void {
  const band = section('band', rateHz, spec.puffHz, spec.puffQ);
  // Keeps the peak near `peakPa` whatever the width of the band.
  const gain = peakPa / noiseGain(spec.puffHz, spec.puffQ, rateHz);
  lay(out, rateHz, timeS, spec.puffDecayS, (t) => {
    const swell = (1 - Math.exp(-t / spec.puffAttackS)) * Math.exp(-t / spec.puffDecayS);
    return gain * swell * band.next(roughNormal(random));
  });
}

/** A low tone that dies away: the pool or the drop as a whole. */
function thump(
  out: Float64Array,
  rateHz: number,
  timeS: number,
  peakPa: number,
  spec: EventSoundSpec,
  random: Random,
): void {
  const phase = random.uniform(0, 2 * Math.PI);
  if (peakPa === 0) return;
  lay(out, rateHz, timeS, spec.thumpS, (t) => {
    const tone = Math.sin(2 * Math.PI * spec.thumpHz * t + phase) * Math.exp(-t / spec.thumpS);
    return peakPa * tone;
  });
}

/** A steep click with a coloured tail. */
function crack(
  out: Float64Array,
  rateHz: number,
  timeS: number,
  peakPa: number,
  spec: EventSoundSpec,
  random: Random,
): void {
  const band = section('band', rateHz, spec.crackHz, 1);
  const gain = peakPa / noiseGain(spec.crackHz, 1, rateHz);
  lay(out, rateHz, timeS, spec.crackTailS, (t, k) => {
    const tail = Math.exp(-t / spec.crackTailS) * band.next(roughNormal(random));
    const click = k < 3 ? peakPa * (1 - k / 3) : 0;
    return click + spec.crackNoise * gain * tail;
  });
}

/** Adds what sounds from `timeS` on until it has died away to e⁻⁶; its value by seconds and samples since then. */
function lay(
  out: Float64Array,
  rateHz: number,
  timeS: number,
  decayS: number,
  value: (t: number, k: number) => number,
): void {
  const count = Math.ceil(6 * decayS * rateHz);
  const start = Math.round(timeS * rateHz);
  for (let k = 0; k < count && start + k < out.length; k++) {
    const sound = value(k / rateHz, k);
    if (start + k >= 0) out[start + k]! += sound;
  }
}
