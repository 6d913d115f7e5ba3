import type { Random } from '../../../core/index.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import type { SoundParts } from './sound-parts.js';

/** Adds a burst of noise that dies away. */
export function burst(
  out: Float64Array,
  rateHz: number,
  timeS: number,
  peakPa: number,
  ringS: number,
  random: Random,
): void {
  const start = Math.round(timeS * rateHz);
  const decay = Math.exp(-1 / (ringS * rateHz));
  const end = Math.min(out.length, start + Math.ceil(6 * ringS * rateHz) + 2);
  let level = peakPa;
  for (let i = Math.max(0, start); i < end; i++) {
    out[i]! += level * (2 * random.next() - 1);
    level *= decay;
  }
}

/** Detaching drops and spatter: not tied to the electrical power. Spatter is no event that is counted. */
export function addCrackle(
  into: SoundParts,
  run: ArcRun,
  acoustic: AcousticScenario,
  random: Random,
): void {
  const rateHz = acoustic.rateHz;
  const wire = run.scenario.wire.diameterMm;
  if (acoustic.dropPa > 0 && run.truth.drops.length > 0) {
    const out = into.of('drop');
    for (const drop of run.truth.drops) {
      const size = (drop.diameterMm / wire) ** 3 * Math.exp(0.5 * random.normal());
      burst(out, rateHz, drop.timeS, acoustic.dropPa * size, acoustic.dropS, random);
    }
  }
  for (const short of run.truth.shorts) {
    if (random.next() > acoustic.crackleShare) continue;
    const size = acoustic.cracklePa * Math.exp(0.8 * random.normal());
    const timeS = short.endS + random.uniform(0, 2e-3);
    burst(into.of('reignition'), rateHz, timeS, size, 1.5e-4, random);
  }
  const rate = acoustic.crackleRate;
  for (const arc of run.truth.arcOn) {
    if (!(rate > 0)) break;
    let t = arc.startS - Math.log(1 - random.next()) / rate;
    while (t < arc.endS) {
      const size = acoustic.cracklePa * Math.min(20, (1 - random.next()) ** -0.5 - 0.9);
      burst(into.rest, rateHz, t, size, random.logUniform(5e-5, 6e-4), random);
      t -= Math.log(1 - random.next()) / rate;
    }
  }
}
