import { createRandom, type Mode } from '../../../src/core/index.js';
import { concat } from '../../../src/dsp/index.js';
import {
  type AcousticScenario,
  type ArcScenario,
  degradeSound,
  drawAcoustics,
  drawChain,
  drawScenario,
  POWER_FAMILIES,
  type SoundChain,
  simulateArc,
  simulateSound,
} from '../../../src/lab/simulate/index.js';

export const TRACE_HZ = 10_000;
export const SOUND_HZ = 44_100;
/** Steady arc of a weld that is kept, s; the start is left out. */
export const WELD_S = 5;
/** Welds of a cell: those that are vouched for, and those that are watched. */
export const GOOD = 2;
export const WATCHED = 2;

/** Steady arc of one weld: voltage, current, and its sound in free air. */
export interface Weld {
  traces: Float64Array[];
  free: Float64Array;
}

/** One machine, wire, gas, room and microphone, and welds of it that differ by chance alone. */
export interface Cell {
  id: string;
  mode: Mode;
  family: string;
  chain: SoundChain;
  welds: Weld[];
}

/** Undefined where a weld is not wholly in the mode that was aimed at. */
export function drawCell(id: string, mode: Mode, family: string): Cell | undefined {
  const random = createRandom(id);
  const drawn = drawScenario(random, { mode, family, arcS: WELD_S + 2 });
  const acousticFamily = random.pick(POWER_FAMILIES);
  const acoustics = { ...drawAcoustics(random, { family: acousticFamily }), rateHz: SOUND_HZ };
  // A microphone that is fixed beside a cell; none of the phones and calls of the fitting.
  const chain = { ...drawChain(random, { family: random.pick(['studio', 'shop']) }) };
  const scenario = { ...drawn, electricalRateHz: TRACE_HZ, openStart: false, openEnd: false };
  const welds: Weld[] = [];
  for (let k = 0; k < GOOD + WATCHED; k++) {
    const weld = drawWeld(`${id} weld ${k}`, mode, scenario, acoustics);
    if (!weld) return undefined;
    welds.push(weld);
  }
  return { id, mode, family, chain: { ...chain, outRateHz: SOUND_HZ }, welds };
}

/** What the cell's microphone stores of arcs one after the other; `label` names the noise of that day. */
export function heardBy({ id, chain }: Cell, label: string, arcs: readonly Weld[]): Float64Array {
  const seed = createRandom(`${id} ${label}`).integer(0, 2 ** 31 - 1);
  const free = concat(arcs.map((arc) => arc.free));
  // Levelled by the first arc, so that a change of mode is heard as loud as it is.
  const arcOn = [{ startS: 0, endS: WELD_S }];
  return degradeSound(free, SOUND_HZ, { ...chain, seed }, { arcOn }).samples;
}

function drawWeld(
  id: string,
  mode: Mode,
  scenario: ArcScenario,
  acoustics: AcousticScenario,
): Weld | undefined {
  const random = createRandom(id);
  const seed = (): number => random.integer(0, 2 ** 31 - 1);
  const run = simulateArc({ ...scenario, seed: seed() });
  if (run.truth.mode !== mode || !run.truth.unambiguous) return undefined;
  const fromS = run.truth.arcOn[0]!.startS + 1;
  const cut = (samples: Float64Array, rateHz: number): Float64Array =>
    samples.slice(Math.round(fromS * rateHz), Math.round((fromS + WELD_S) * rateHz));
  return {
    traces: [cut(run.voltageV, TRACE_HZ), cut(run.currentA, TRACE_HZ)],
    free: cut(simulateSound(run, { ...acoustics, seed: seed() }), SOUND_HZ),
  };
}
