import { createRandom } from '../../../core/index.js';
import type { ArcScenario } from '../scenario.js';
import { observed } from './arc.js';
import type { SteadyFigures } from './figures.js';
import { nameRun } from './label.js';
import { ArcMachine, STEP_S } from './machine.js';

/** Settling of arc length and current before anything is counted. */
const SETTLE_S = 0.2;
const COUNTED_S = 0.4;
/** In CO2 drops touch now and then, a few times a second: a longer look. */
const COUNTED_IN_CO2_S = 1.2;

/** Burns the scenario for a moment, without strike, crater and changes, and says what it does. */
export function tryOut(scenario: ArcScenario): SteadyFigures {
  const machine = new ArcMachine(scenario, createRandom(scenario.seed).fork('try-out'));
  machine.feedMmPerS = (scenario.wire.feedMPerMin * 1000) / 60;
  machine.start(true);
  const settle = Math.round(SETTLE_S / STEP_S);
  const free = scenario.gas.co2Percent >= 30 && scenario.source.kind !== 'controlled-dip';
  const countedS = free ? COUNTED_IN_CO2_S : COUNTED_S;
  const steps = settle + Math.round(countedS / STEP_S);
  let sumV = 0;
  let sumA = 0;
  for (let i = 0; i < steps; i++) {
    machine.step();
    if (i < settle) continue;
    sumV += machine.voltageV + scenario.probe.leadOhm * machine.circuit.currentA;
    sumA += machine.circuit.currentA;
  }
  machine.stop();
  const seen = observed(machine, SETTLE_S);
  const truth = nameRun(scenario, seen, []);
  const mode = truth.mode === 'mixed' ? null : truth.mode;
  const starts = seen.shorts.map((s) => s.startS);
  const durations = seen.shorts.map((s) => s.endS - s.startS).sort((a, b) => a - b);
  const burntS = seen.arcOn.reduce((sum, { startS, endS }) => sum + endS - startS, 0);
  return {
    mode,
    modeShare: mode === null ? 0 : truth.shares[mode],
    freeFlight: truth.freeFlight,
    burningShare: burntS / countedS,
    meanV: sumV / (steps - settle),
    meanA: sumA / (steps - settle),
    shortRateHz: seen.shorts.length / countedS,
    shortIntervalCv: intervalCv(starts),
    shortS: durations[Math.floor(durations.length / 2)] ?? Number.NaN,
    dropRateHz: seen.drops.length / countedS,
    dropRatio: truth.meanDropRatio,
    pulseRateHz: seen.pulses.length > 0 ? seen.pulses.length / countedS : Number.NaN,
    dropsPerPulse: truth.dropsPerPulse,
  };
}

/** Coefficient of variation of the times from one to the next; NaN of fewer than eight, which say little. */
function intervalCv(starts: readonly number[]): number {
  if (starts.length < 9) return Number.NaN;
  const intervals = starts.slice(1).map((start, i) => start - starts[i]!);
  const mean = intervals.reduce((sum, t) => sum + t, 0) / intervals.length;
  const variance = intervals.reduce((sum, t) => sum + (t - mean) ** 2, 0) / intervals.length;
  return Math.sqrt(variance) / mean;
}
