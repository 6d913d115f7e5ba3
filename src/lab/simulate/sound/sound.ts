import { createRandom, type Random } from '../../../core/index.js';
import { sampleAt, section, smooth } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import { burst, crackle } from './crackle.js';
import { eventSounds } from './event-sounds.js';
import { flutter } from './flutter.js';
import { hiss } from './hiss.js';
import { swells } from './swells.js';

/** Speed of sound in air at 20 °C, m/s: √(1.4 · 287 · 293). */
export const SOUND_SPEED = 343;

/** Pressure at 1 m per rate of change of power, `(gamma − 1)/(4·pi·c²)`: 2.71e-7 Pa·s/W; a compact heat source in free air. */
export const MONOPOLE_AT_1M = 0.4 / (4 * Math.PI * SOUND_SPEED ** 2);

/** Pressure in Pa at the microphone in free air, over the same time as the run's traces. */
export function simulateSound(run: ArcRun, acoustic: AcousticScenario): Float64Array {
  const random = createRandom(acoustic.seed);
  const rateHz = acoustic.rateHz;
  const count = Math.floor(run.durationS * rateHz);
  const out = pulses(run, acoustic, count);
  const parts = [
    shakenHiss(run, acoustic, count, random),
    crackle(run, acoustic, count, random.fork('crackle')),
    surroundings(run, acoustic, count, random.fork('surroundings')),
  ];
  if (acoustic.eventSounds)
    parts.push(eventSounds(run, acoustic.eventSounds, rateHz, random.fork('voices')));
  for (const part of parts) for (let i = 0; i < count; i++) out[i]! += part[i]!;
  ring(out, acoustic);
  return arrived(out, acoustic);
}

/** Hiss as it flutters and, where the family has it, swells at the events. */
function shakenHiss(
  run: ArcRun,
  acoustic: AcousticScenario,
  count: number,
  random: Random,
): Float64Array {
  const { rateHz } = acoustic;
  const out = hiss(run, acoustic, count, random.fork('hiss'));
  const gains = [flutter(run, acoustic.flutter, rateHz, random.fork('flutter'))];
  if (acoustic.swells) gains.push(swells(run, acoustic.swells, rateHz, random.fork('swells')));
  for (const gain of gains) for (let i = 0; i < count; i++) out[i]! *= gain[i]!;
  return out;
}

/** The monopole alone: `K/r·d(VI)/dt`, through the finite inertia of the plasma. A jet of 0.07·I² W beside it is own choice. */
function pulses(run: ArcRun, acoustic: AcousticScenario, count: number): Float64Array {
  const { powerW, arcCurrentA, powerRateHz } = run;
  const { exponent, jetShare, negativeShare } = acoustic;
  const scale = MONOPOLE_AT_1M * acoustic.pulseGain * powerRateHz;
  const slope = new Float32Array(powerW.length);
  let last = Number.NaN;
  for (let i = 0; i < slope.length; i++) {
    let power = powerW[i]!;
    if (jetShare > 0) power += jetShare * (0.07 * arcCurrentA[i]! ** 2 - power);
    if (exponent !== 1 && power > 0) power = 4000 * (power / 4000) ** exponent;
    const change = i === 0 ? 0 : power - last;
    last = power;
    slope[i] = scale * (change < 0 ? change * negativeShare : change);
  }
  section('low', powerRateHz, acoustic.pulseHz).run(slope);
  smooth(slope, powerRateHz, Math.min(18000, 0.42 * acoustic.rateHz));
  return sampleAt(slope, powerRateHz, acoustic.rateHz, count);
}

/** Gas flow, feeder and contactor: they begin before the arc and outlast it. */
function surroundings(
  run: ArcRun,
  acoustic: AcousticScenario,
  count: number,
  random: Random,
): Float64Array {
  const out = new Float64Array(count);
  const { scenario } = run;
  const rateHz = acoustic.rateHz;
  const triggerS = scenario.openStart ? -1 : scenario.leadInS;
  const endS = (scenario.openStart ? 0 : scenario.leadInS) + scenario.arcS;
  const gasFrom = (triggerS - acoustic.gasLeadS) * rateHz;
  const gasTo = (endS + acoustic.gasTailS) * rateHz;
  const flow = section('band', rateHz, 5000, 0.4);
  for (let i = 0; i < count; i++) {
    if (i < gasFrom || i > gasTo) continue;
    out[i] = 1.6 * acoustic.gasPa * flow.next(roughNormal(random));
    if (acoustic.feederPa > 0 && i > triggerS * rateHz && i < endS * rateHz) {
      const phase = (2 * Math.PI * acoustic.feederHz * i) / rateHz;
      out[i]! += acoustic.feederPa * (Math.sin(phase) + 0.4 * Math.sin(2 * phase));
    }
  }
  if (acoustic.clickPa > 0) {
    for (const t of [triggerS, endS]) {
      if (t >= 0) burst(out, rateHz, t, acoustic.clickPa, 1e-3, random);
    }
  }
  return out;
}

/** Plate, nozzle and fixture ring along. */
function ring(out: Float64Array, acoustic: AcousticScenario): void {
  if (acoustic.modes.length === 0) return;
  const filters = acoustic.modes.map((mode) => ({
    gain: mode.gain,
    filter: section('band', acoustic.rateHz, mode.hz, mode.q),
  }));
  for (let i = 0; i < out.length; i++) {
    const dry = out[i]!;
    let wet = dry;
    for (const { gain, filter } of filters) wet += gain * 2 * filter.next(dry);
    out[i] = wet;
  }
}

/** Distance: 1/r and r/c later. */
function arrived(source: Float64Array, acoustic: AcousticScenario): Float64Array {
  const delay = acoustic.distanceM / SOUND_SPEED;
  const out = sampleAt(source, acoustic.rateHz, acoustic.rateHz, source.length, -delay);
  const first = Math.ceil(delay * acoustic.rateHz);
  for (let i = 0; i < out.length; i++) out[i] = i < first ? 0 : out[i]! / acoustic.distanceM;
  return out;
}
