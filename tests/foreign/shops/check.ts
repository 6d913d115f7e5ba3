import type { ForeignMode, ForeignRecording } from '../world.js';
import { filter, type Line, rms } from './filters.js';
import { shop } from './shop.js';

/** What can be measured on one weld without trusting the truth that lies beside it. */
export interface Measured {
  shopSeed: number;
  weldSeed: number;
  mode: ForeignMode;
  gas: string;
  /** Any sample that is not a number or over full scale. */
  bad: number;
  meanV: number;
  meanA: number;
  shortsPerS: number;
  /** Short circuits counted in the log: falls under 10 V that last, a second. */
  recountedPerS: number;
  /** The same in the trace before the logger. */
  tracePerS: number;
  /** Median distance of a re-ignition of the truth from the loudest of its sound near it, ms. */
  soundMissMs: number | null;
  dropsPerS: number;
  dropPerWire: number | null;
  pulseHz: number | null;
  /**
   * Median distance of a short of the truth from the nearest fall in the log, ms; null without
   * shorts.
   */
  logMissMs: number | null;
  /** Level of the arc in the file and over what stands before it, dB. */
  levelDb: number;
  overDb: number;
  /** Sum of the linear parts against the file; 1 where nothing but rounding lies between. */
  likeness: number;
  kurtosis: number;
  cpuS: number;
}

function mean(x: Line, from: number, to: number): number {
  let sum = 0;
  for (let n = from; n < to; n++) sum += x[n] ?? 0;
  return sum / Math.max(1, to - from);
}

/** Times at which the log falls under 10 V from over 13 V (common practice: 8 to 12 V). */
function fallsS(v: Line, rateHz: number, from: number, to: number): number[] {
  const times: number[] = [];
  let high = false;
  for (let n = from; n < to; n++) {
    const x = v[n] ?? 0;
    if (x > 13) high = true;
    else if (x < 10 && high) {
      high = false;
      times.push(n / rateHz);
    }
  }
  return times;
}

/** How far the largest swing within 4 ms lies from where a re-ignition should sound, ms. */
function soundMiss(recording: ForeignRecording, timesS: number[]): number | null {
  const { linear, sampleRateHz, arcStartS } = recording;
  const heard = linear.events.reignition;
  const reach = Math.round(0.004 * sampleRateHz);
  const misses = timesS.map((t) => {
    const at = Math.round((arcStartS + t) * sampleRateHz);
    let best = at;
    for (let n = at - reach; n <= at + reach; n++) {
      if (Math.abs(heard[n] ?? 0) > Math.abs(heard[best] ?? 0)) best = n;
    }
    return (1e3 * (best - at)) / sampleRateHz;
  });
  misses.sort((a, b) => a - b);
  return misses.length > 0 ? (misses[Math.floor(misses.length / 2)] ?? 0) : null;
}

/** Kurtosis less three of the band 1.5-12 kHz. */
function kurtosis(x: Line, rateHz: number, from: number, to: number): number {
  const band = filter(
    filter(x.slice(from, to), 'high', 1500, 0.7, rateHz),
    'low',
    12000,
    0.7,
    rateHz,
  );
  let two = 0;
  let four = 0;
  for (const d of band) {
    two += d * d;
    four += d ** 4;
  }
  return (four * band.length) / Math.max(1e-30, two * two) - 3;
}

function likeness(a: Line, b: Line): number {
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let n = 0; n < a.length; n++) {
    ab += (a[n] ?? 0) * (b[n] ?? 0);
    aa += (a[n] ?? 0) ** 2;
    bb += (b[n] ?? 0) ** 2;
  }
  return ab / Math.sqrt(Math.max(1e-30, aa * bb));
}

/** Draws a weld and measures it; `nowS` gives seconds for the cost. */
export function measure(shopSeed: number, weldSeed: number, nowS: () => number): Measured {
  const place = shop(shopSeed);
  const before = nowS();
  const { arc, recording, log, driftPpm } = place.weld(weldSeed);
  const cpuS = nowS() - before;
  const { samples, sampleRateHz, linear } = recording;
  let bad = 0;
  const sum = new Float32Array(samples.length);
  const parts = [linear.rest, ...Object.values(linear.events)];
  for (const p of parts) for (let n = 0; n < sum.length; n++) sum[n] = (sum[n] ?? 0) + (p[n] ?? 0);
  const traces = [arc.trace.voltageV, arc.trace.currentA, log.voltageV];
  for (const x of [...parts, ...traces]) for (const v of x) if (!Number.isFinite(v)) bad++;
  for (const v of samples) if (!(Math.abs(v) <= 1)) bad++;
  const from = Math.round(log.arcStartS * log.sampleRateHz);
  const to = Math.round(log.arcEndS * log.sampleRateHz);
  const falls = fallsS(log.voltageV, log.sampleRateHz, from, to);
  const trace = arc.trace;
  const inTrace = fallsS(trace.voltageV, trace.sampleRateHz, 0, trace.voltageV.length);
  const misses = arc.truth.eventsS.short
    .map((t) => log.arcStartS + t * (1 + driftPpm * 1e-6))
    .map((t) => Math.min(1, ...falls.map((f) => Math.abs(f - t))))
    .sort((a, b) => a - b);
  const arcFrom = Math.round(recording.arcStartS * sampleRateHz);
  const arcTo = Math.round(recording.arcEndS * sampleRateHz);
  const level = rms(samples, arcFrom, arcTo);
  const drop = arc.truth.dropDiameterMm;
  return {
    shopSeed,
    weldSeed,
    mode: arc.truth.mode,
    gas: arc.setup.gas,
    bad,
    meanV: mean(log.voltageV, from, to),
    meanA: log.currentA === null ? 0 : mean(log.currentA, from, to),
    shortsPerS: arc.truth.shortsPerS,
    recountedPerS: falls.length / arc.durationS,
    tracePerS: inTrace.length / arc.durationS,
    soundMissMs: soundMiss(recording, arc.truth.eventsS.reignition),
    dropsPerS: arc.truth.dropsPerS,
    dropPerWire: drop === null ? null : drop / arc.setup.wireDiameterMm,
    pulseHz: arc.truth.pulseHz,
    logMissMs: misses.length > 0 ? 1e3 * (misses[Math.floor(misses.length / 2)] ?? 0) : null,
    levelDb: 20 * Math.log10(level),
    overDb: 20 * Math.log10(level / Math.max(1e-6, rms(samples, 0, arcFrom))),
    likeness: likeness(sum, samples),
    kurtosis: kurtosis(samples, sampleRateHz, arcFrom, arcTo),
    cpuS,
  };
}
