import { MODES, type Mode, type SourceProgramme } from '../../../core/index.js';
import type { DropTruth, RunTruth, SegmentTruth, ShortTruth } from '../run.js';
import type { ArcScenario } from '../scenario.js';
import { clearOfBoundary, type FreeMetal, flightForm, freeMetal } from './free-flight.js';

/** What was observed in a run, times already in the run's own time. */
export interface Observed {
  shorts: ShortTruth[];
  drops: DropTruth[];
  arcOn: { startS: number; endS: number }[];
  pulses: number[];
}

interface Tally {
  shares: Record<Mode, number>;
  totalMm3: number;
  free: FreeMetal;
}

/** Names each arc interval by what crossed the gap in it, never by the settings. */
export function nameRun(scenario: ArcScenario, seen: Observed, changesS: number[]): RunTruth {
  const startS = seen.arcOn[0]?.startS ?? 0;
  const endS = seen.arcOn.at(-1)?.endS ?? 0;
  const edges = [startS, ...changesS.filter((t) => t > startS && t < endS), endS];
  const segments: SegmentTruth[] = [];
  for (let i = 0; i + 1 < edges.length; i++) {
    const part = { startS: edges[i]!, endS: edges[i + 1]! };
    const { shares, totalMm3 } = tally(scenario, seen, part.startS, part.endS);
    if (totalMm3 > 0) segments.push({ ...part, mode: largest(shares), shares });
  }
  const whole = tally(scenario, seen, startS, endS);
  const pulses = seen.pulses.filter((t) => t >= startS && t < endS).length;
  const { shorts, drops, arcOn } = seen;
  const dropsPerPulse = pulses > 0 ? drops.length / pulses : Number.NaN;
  return {
    shorts,
    drops,
    arcOn,
    segments: joined(segments),
    mode: runMode(segments),
    shares: whole.shares,
    meanDropRatio: whole.free.meanDropRatio,
    dropsPerPulse,
    sourceProgramme: programme(scenario),
    freeFlight: pulses > 0 ? null : flightForm(whole.free),
    setWrong: scenario.setWrong,
    unambiguous: isUnambiguous(scenario, whole, segments, dropsPerPulse),
  };
}

function programme(scenario: ArcScenario): SourceProgramme {
  if (scenario.source.kind === 'pulsed') return 'pulsed';
  return scenario.source.kind === 'controlled-dip' ? 'controlled-dip' : 'steady';
}

function tally(scenario: ArcScenario, seen: Observed, startS: number, endS: number): Tally {
  const volumes: Record<Mode, number> = zeros();
  for (const short of seen.shorts) {
    if (short.endS >= startS && short.endS < endS) volumes['short-circuit'] += short.transferredMm3;
  }
  const drops = seen.drops.filter((drop) => drop.timeS >= startS && drop.timeS < endS);
  const free = freeMetal(scenario, drops);
  for (const mode of MODES) volumes[mode] += free.volumes[mode] ?? 0;
  const totalMm3 = MODES.reduce((sum, mode) => sum + volumes[mode], 0);
  const shares = zeros();
  if (totalMm3 > 0) for (const mode of MODES) shares[mode] = volumes[mode] / totalMm3;
  return { shares, totalMm3, free };
}

function zeros(): Record<Mode, number> {
  return { 'short-circuit': 0, globular: 0, spray: 0, 'pulsed-spray': 0 };
}

function largest(shares: Record<Mode, number>): Mode {
  return MODES.reduce((best, mode) => (shares[mode] > shares[best] ? mode : best));
}

/** Neighbours of one mode become one segment. */
function joined(segments: SegmentTruth[]): SegmentTruth[] {
  const out: SegmentTruth[] = [];
  for (const segment of segments) {
    const last = out.at(-1);
    if (last !== undefined && last.mode === segment.mode && last.endS === segment.startS) {
      last.endS = segment.endS;
    } else out.push({ ...segment });
  }
  return out;
}

/** The mode of at least 85 % of the time; `mixed` when two modes held for longer arc intervals. */
function runMode(segments: SegmentTruth[]): RunTruth['mode'] {
  const times = zeros();
  let total = 0;
  for (const segment of segments) {
    times[segment.mode] += segment.endS - segment.startS;
    total += segment.endS - segment.startS;
  }
  if (total === 0) return null;
  const best = largest(times);
  return times[best] >= 0.85 * total ? best : 'mixed';
}

/** One mechanism carries 85 % of the metal, and its free drops are clear of the boundary that names it. */
function isUnambiguous(
  scenario: ArcScenario,
  whole: Tally,
  segments: SegmentTruth[],
  dropsPerPulse: number,
): boolean {
  const mode = largest(whole.shares);
  if (runMode(segments) !== mode || whole.shares[mode] < 0.85) return false;
  return mode === 'short-circuit' || clearOfBoundary(scenario, mode, whole.free, dropsPerPulse);
}
