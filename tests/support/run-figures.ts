import type { ArcRun } from '../../src/lab/simulate/index.js';

/** What a meter and a high-speed film would say of a run, from its traces and events. NaN where nothing was. */
export interface RunFigures {
  meanV: number;
  meanA: number;
  shortRateHz: number;
  /** Of the time from one short to the next. */
  shortIntervalCv: number;
  /** Median duration. */
  shortS: number;
  dropRateHz: number;
  /** Volume-weighted mean drop diameter in wire diameters. */
  dropRatio: number;
  pulseRateHz: number;
  dropsPerPulse: number;
}

/** Leaves out what the strike and the crater do. */
const STRIKE_S = 0.25;
const CRATER_S = 0.05;

export function runFigures(run: ArcRun): RunFigures {
  const { truth, scenario, electricalRateHz: rate } = run;
  const craterS = scenario.openEnd ? 0 : scenario.ends.craterS;
  const fromS = (truth.arcOn.at(-1)?.startS ?? 0) + (scenario.openStart ? 0.05 : STRIKE_S);
  const toS = (truth.arcOn.at(-1)?.endS ?? 0) - craterS - CRATER_S;
  const steadyS = toS - fromS;
  const inside = (timeS: number): boolean => timeS >= fromS && timeS < toS;
  const part = (samples: Float64Array): Float64Array =>
    samples.subarray(Math.round(fromS * rate), Math.max(0, Math.round(toS * rate)));
  const shorts = truth.shorts.filter((s) => inside(s.startS) && s.endS < toS);
  const drops = truth.drops.filter((d) => inside(d.timeS));
  const pulses = run.pulsesS?.filter(inside).length ?? Number.NaN;
  const intervals = shorts.slice(1).map((s, i) => s.startS - shorts[i]!.startS);
  let cubes = 0;
  let fourths = 0;
  for (const { diameterMm } of drops) {
    cubes += diameterMm ** 3;
    fourths += diameterMm ** 4;
  }
  return {
    meanV: mean(part(run.voltageV)),
    meanA: mean(part(run.currentA)),
    shortRateHz: shorts.length / steadyS,
    shortIntervalCv: intervals.length > 4 ? deviation(intervals) / mean(intervals) : Number.NaN,
    shortS: quantile(
      shorts.map((s) => s.endS - s.startS),
      0.5,
    ),
    dropRateHz: drops.length / steadyS,
    dropRatio: drops.length > 0 ? fourths / cubes / scenario.wire.diameterMm : Number.NaN,
    pulseRateHz: pulses / steadyS,
    dropsPerPulse: drops.length / pulses,
  };
}

export function mean(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]!;
  return sum / values.length;
}

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

/** By linear interpolation between the sorted values; NaN of none, and values that are NaN left out. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)] ?? Number.NaN;
  const high = sorted[Math.ceil(at)] ?? Number.NaN;
  return low + (at - Math.floor(at)) * (high - low);
}
