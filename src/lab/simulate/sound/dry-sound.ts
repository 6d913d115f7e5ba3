import { createRandom, type Random } from '../../../core/index.js';
import { section } from '../devices/filter.js';
import { roughNormal } from '../physics/motion.js';
import type { ArcRun } from '../run.js';
import type { AcousticScenario } from './acoustic.js';
import { addCrackle, burst } from './crackle.js';
import { eventTimes } from './event-gates.js';
import { EVENT_KINDS, type EventKind } from './event-kinds.js';
import { addVoices } from './event-sounds.js';
import { addHiss } from './hiss.js';
import { powerSound, SOUND_SPEED } from './power-sound.js';
import { SoundParts } from './sound-parts.js';

/** A dry sound taken apart: `rest` and all parts add up to what `simulateSound` gives, but for rounding. */
export interface DrySound {
  rateHz: number;
  rest: Float64Array;
  /** The sound of each kind of event by itself; kinds that make none are absent. */
  events: Partial<Record<EventKind, Float64Array>>;
  /** When they happen at the arc, s; at the microphone `delayS` later. */
  eventsS: Record<EventKind, number[]>;
  delayS: number;
}

/** As `simulateSound`, each kind of event by itself. */
export function simulateDrySound(run: ArcRun, acoustic: AcousticScenario): DrySound {
  const eventsS = eventTimes(run);
  const { rest, parts } = gatherSound(run, acoustic, eventsS, true);
  return {
    rateHz: acoustic.rateHz,
    rest,
    events: parts,
    eventsS,
    delayS: acoustic.distanceM / SOUND_SPEED,
  };
}

/** All that sounds, the kinds of events kept apart or not. */
export function gatherSound(
  run: ArcRun,
  acoustic: AcousticScenario,
  times: Record<EventKind, number[]>,
  apart: boolean,
): SoundParts {
  const random = createRandom(acoustic.seed);
  const { rateHz } = acoustic;
  const into = new SoundParts(Math.floor(run.durationS * rateHz), apart);
  addPower(into, run, acoustic, times);
  addHiss(into, run, acoustic, times, random);
  addCrackle(into, run, acoustic, random.fork('crackle'));
  addSurroundings(into.rest, run, acoustic, random.fork('surroundings'));
  if (acoustic.eventSounds)
    addVoices(into, run, acoustic.eventSounds, times, rateHz, random.fork('voices'));
  for (const series of into.all()) {
    ring(series, acoustic);
    arrive(series, acoustic);
  }
  return into;
}

function addPower(
  into: SoundParts,
  run: ArcRun,
  acoustic: AcousticScenario,
  times: Record<EventKind, number[]>,
): void {
  const { whole, parts } = powerSound(run, acoustic, into.count, into.apart ? times : null);
  const { rest } = into;
  for (let i = 0; i < whole.length; i++) rest[i]! += whole[i]!;
  for (const kind of EVENT_KINDS) {
    const part = parts[kind];
    if (part === undefined) continue;
    const own = into.of(kind);
    for (let i = 0; i < part.length; i++) {
      own[i]! += part[i]!;
      rest[i]! -= part[i]!;
    }
  }
}

/** Gas flow, feeder and contactor: they begin before the arc and outlast it. */
function addSurroundings(
  out: Float64Array,
  run: ArcRun,
  acoustic: AcousticScenario,
  random: Random,
): void {
  const { scenario } = run;
  const rateHz = acoustic.rateHz;
  const triggerS = scenario.openStart ? -1 : scenario.leadInS;
  const endS = (scenario.openStart ? 0 : scenario.leadInS) + scenario.arcS;
  const flow = section('band', rateHz, 5000, 0.4);
  const within = (fromS: number, toS: number, value: (i: number) => number): void => {
    const to = Math.min(out.length - 1, Math.floor(toS * rateHz));
    for (let i = Math.max(0, Math.ceil(fromS * rateHz)); i <= to; i++) out[i]! += value(i);
  };
  if (acoustic.gasPa > 0)
    within(triggerS - acoustic.gasLeadS, endS + acoustic.gasTailS, () => {
      return 1.6 * acoustic.gasPa * flow.next(roughNormal(random));
    });
  if (acoustic.feederPa > 0)
    within(triggerS, endS, (i) => {
      const phase = (2 * Math.PI * acoustic.feederHz * i) / rateHz;
      return acoustic.feederPa * (Math.sin(phase) + 0.4 * Math.sin(2 * phase));
    });
  if (acoustic.clickPa > 0) {
    for (const t of [triggerS, endS]) {
      if (t >= 0) burst(out, rateHz, t, acoustic.clickPa, 1e-3, random);
    }
  }
}

/** Plate, nozzle and fixture ring along, in place. */
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

/** Distance, in place: 1/r and r/c later, to the nearest sample. */
function arrive(out: Float64Array, acoustic: AcousticScenario): void {
  const delay = Math.round((acoustic.distanceM / SOUND_SPEED) * acoustic.rateHz);
  out.copyWithin(delay, 0, out.length - delay);
  out.fill(0, 0, Math.min(delay, out.length));
  for (let i = delay; i < out.length; i++) out[i]! /= acoustic.distanceM;
}
