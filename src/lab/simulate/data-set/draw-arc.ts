import { createRandom, MODES, type Random } from '../../../core/index.js';
import { CHAIN_FAMILIES, drawChain } from '../devices/draw-chain.js';
import { ELECTRICAL_FAMILIES } from '../families.js';
import { NOISE_GROUPS } from '../noise/noise.js';
import { simulateArc } from '../physics/arc.js';
import { drawScenario } from '../physics/draw.js';
import type { ArcRun } from '../run.js';
import { ACOUSTIC_FAMILIES, drawAcoustics } from '../sound/acoustic.js';
import { type Audibility, audibility } from '../sound/audibility/audibility.js';
import { heardMode } from '../sound/audibility/heard.js';
import { type DrySound, simulateDrySound } from '../sound/dry-sound.js';
import { eventTimes } from '../sound/event-gates.js';
import { EVENT_KINDS, type EventKind } from '../sound/event-kinds.js';
import { electricalStrength } from '../sound/event-strength.js';
import type { ArcLine, AudibleLine, DataSetHead, EventSummary, SetupLine } from './format.js';
import { toHalves } from './half.js';
import type { ArcSeries } from './series.js';

/** Arc `index` of a data set: its series go into `into`, the line that describes it comes back. */
export function drawSetArc(head: DataSetHead, index: number, into: ArcSeries): ArcLine {
  const random = createRandom(`data set ${head.seed} arc ${index}`);
  const aim = MODES[index % MODES.length]!;
  const family =
    ELECTRICAL_FAMILIES[Math.floor(index / MODES.length) % ELECTRICAL_FAMILIES.length]!;
  const arcS = random.uniform(...head.arcS);
  const run = simulateArc(drawScenario(random.fork('scenario'), { mode: aim, family, arcS }));
  const { truth } = run;
  const times = eventTimes(run);
  const events = { ...summarise(run, times), rows: into.events.add(eventRows(run, times)) };
  return {
    index,
    family,
    aim,
    mode: truth.mode,
    unambiguous: truth.unambiguous,
    shares: truth.shares,
    durationS: run.durationS,
    arcOn: truth.arcOn,
    segments: truth.segments.map(({ startS, endS, mode }) => ({ startS, endS, mode })),
    events,
    setup: setupOf(run),
    sounds: Array.from({ length: head.soundsPerArc }, (_, k) =>
      drawSound(run, events.shortsPerS, random.fork(`sound ${k}`), head.soundRateHz, into),
    ),
    traces: head.traces ? addTraces(run, into) : null,
    scenario: run.scenario,
  };
}

function drawSound(
  run: ArcRun,
  shortsPerS: number,
  random: Random,
  rateHz: number,
  into: ArcSeries,
) {
  const family = random.pick(ACOUSTIC_FAMILIES);
  const acoustics = drawAcoustics(random, { family, rateHz });
  const dry = simulateDrySound(run, acoustics);
  const burning = burningOf(run, dry);
  const audible = audibility({ ...dry, ...burning });
  const series = Object.entries(dry.events) as [EventKind, Float64Array][];
  const whole = new Float64Array(dry.rest);
  for (const [, part] of series) for (let i = 0; i < whole.length; i++) whole[i]! += part[i]!;
  const paPerUnit = levelOf(whole, rateHz, burning);
  return {
    ...into.sound.add(toHalves(whole, paPerUnit)),
    family,
    paPerUnit,
    parts: Object.fromEntries(
      series.map(([kind, part]) => [kind, into.parts.add(toHalves(part, paPerUnit))]),
    ),
    audible: mapped(audible, audibleLine),
    heard: heardMode(run.truth.mode, audible, shortsPerS),
    acoustics,
    chain: drawChain(random.fork('chain'), {
      family: random.pick(CHAIN_FAMILIES),
      noiseGroups: Object.keys(NOISE_GROUPS),
    }),
  };
}

/** Where the arc is heard, s; the whole sound where it never burns. */
function burningOf(run: ArcRun, dry: DrySound): { startS: number; endS: number } {
  const { arcOn } = run.truth;
  return {
    startS: (arcOn[0]?.startS ?? 0) + dry.delayS,
    endS: Math.min(run.durationS, (arcOn.at(-1)?.endS ?? run.durationS) + dry.delayS),
  };
}

/** Rms between two times; 1 for silence. */
function levelOf(
  samples: Float64Array,
  rateHz: number,
  { startS, endS }: { startS: number; endS: number },
): number {
  const from = Math.floor(startS * rateHz);
  const to = Math.min(samples.length, Math.floor(endS * rateHz));
  let sum = 0;
  for (let i = from; i < to; i++) sum += samples[i]! * samples[i]!;
  return sum > 0 ? Math.sqrt(sum / (to - from)) : 1;
}

function audibleLine({ dPrime, overRestDb }: Audibility): AudibleLine {
  return {
    dPrime: rounded(dPrime, 3),
    overRestDb: overRestDb.map((db) => (Number.isFinite(db) ? rounded(db, 2) : null)),
  };
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits));
}

function mapped<A, B>(
  values: Partial<Record<EventKind, A>>,
  change: (value: A) => B,
): Partial<Record<EventKind, B>> {
  return Object.fromEntries(Object.entries(values).map(([kind, value]) => [kind, change(value)]));
}

function summarise(run: ArcRun, times: Record<EventKind, number[]>): EventSummary {
  const { arcOn, meanDropRatio, dropsPerPulse } = run.truth;
  const burntS = arcOn.reduce((sum, { startS, endS }) => sum + endS - startS, 0);
  const rate = (count: number): number => (burntS > 0 ? count / burntS : 0);
  return {
    shortsPerS: rate(times.short.length),
    dropsPerS: rate(times.drop.length),
    pulsesPerS: rate(times.pulse.length),
    meanDropRatio: Number.isFinite(meanDropRatio) ? meanDropRatio : null,
    dropsPerPulse: Number.isFinite(dropsPerPulse) ? dropsPerPulse : null,
  };
}

/** Kind, time and size of each event, in order of time. */
function eventRows(run: ArcRun, times: Record<EventKind, number[]>): Float32Array {
  const { shorts, drops } = run.truth;
  const source = run.scenario.source;
  const pulseA = source.kind === 'pulsed' ? source.peakA - source.baseA : 0;
  const size: Record<EventKind, (k: number) => number> = {
    short: () => 0,
    reignition: (k) => shorts[k]!.transferredMm3,
    drop: (k) => drops[k]!.diameterMm,
    pulse: () => pulseA,
  };
  const rows = EVENT_KINDS.flatMap((kind, code) =>
    times[kind].map((timeS, k) => [code, timeS, size[kind](k), electricalStrength(run, timeS)]),
  );
  rows.sort((a, b) => a[1]! - b[1]! || a[0]! - b[0]!);
  return Float32Array.from(rows.flat());
}

function setupOf(run: ArcRun): SetupLine {
  const { wire, gas, source, contactDistanceMm } = run.scenario;
  const { arcOn } = run.truth;
  const mean = (samples: Float64Array): number => {
    let sum = 0;
    let count = 0;
    for (const { startS, endS } of arcOn) {
      const to = Math.min(samples.length, Math.floor(endS * run.electricalRateHz));
      for (let i = Math.ceil(startS * run.electricalRateHz); i < to; i++, count++)
        sum += samples[i]!;
    }
    return count > 0 ? rounded(sum / count, 3) : 0;
  };
  return {
    material: wire.material,
    wireDiameterMm: wire.diameterMm,
    feedMPerMin: wire.feedMPerMin,
    gasGroup: gas.group,
    co2Percent: gas.co2Percent,
    o2Percent: gas.o2Percent,
    contactDistanceMm,
    source: source.kind,
    meanV: mean(run.voltageV),
    meanA: mean(run.currentA),
  };
}

function addTraces(run: ArcRun, into: ArcSeries) {
  const { fullScaleV, fullScaleA, bits } = run.scenario.probe;
  const voltsPerUnit = (2 * fullScaleV) / 2 ** bits;
  const amperesPerUnit = (2 * fullScaleA) / 2 ** bits;
  const codes = (values: Float64Array, step: number): Int16Array => {
    const out = new Int16Array(values.length);
    for (let i = 0; i < out.length; i++)
      out[i] = Math.max(-32768, Math.min(32767, Math.round(values[i]! / step)));
    return out;
  };
  return {
    rateHz: run.electricalRateHz,
    voltage: into.traces.add(codes(run.voltageV, voltsPerUnit)),
    current: into.traces.add(codes(run.currentA, amperesPerUnit)),
    voltsPerUnit,
    amperesPerUnit,
  };
}
