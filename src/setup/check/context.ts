import { MODES, type Mode } from '../../core/index.js';
import {
  ANY_CURRENT,
  type Boundaries,
  currentFromFeed,
  type KnownPoint,
  type ModeShares,
  modeBoundaries,
  overlap,
  type Permits,
  permits,
  type Range,
  type Setup,
  setVoltageAtFeeder,
  sharesOf,
  workingPoint,
} from '../index.js';
import { type Expected, expectedOf } from './expected.js';
import type { CrossCheckInput, Seen } from './input.js';
import { type Loss, tellLosses } from './losses.js';
import { type ModeTimeline, modeTimeline } from './mode-timeline.js';

/** Everything a judgement or an explanation may look at, worked out once. */
export interface Context {
  setup: Setup;
  seen: Seen;
  /** Modes seen in earnest: the verdict, or each with 15 % of the time in a mixed run. */
  modes: Mode[];
  bounds: Boundaries;
  /** Best-known working point: measured before set. */
  point: KnownPoint;
  /** What is judged: the stated value, narrowed by the measured one where the two agree. */
  judged: { voltageV: Range | null; currentA: Range | null };
  /** What the judged volts come from: a meter, the dial, or a trace whose place is not stated. */
  voltsBy: 'measured' | 'set' | 'place-unknown' | null;
  /** What the judged point permits. */
  permitted: Permits;
  /** Expected shares of the modes at the judged point; null where volts or amperes are not known. */
  shares: ModeShares | null;
  /** What the map says at the best-known point, and the way to the wanted mode. */
  expected: Expected;
  /** What the measured (else estimated) point permits. */
  permittedAtPoint: Permits;
  /** Current the stated feed should draw, electrode positive. */
  feedCurrentA: Range | null;
  measuredA: number | null;
  /** Volts measured by the user or the trace lie outside what the set voltage can leave. */
  voltageAstray: boolean;
  losses: Loss[];
  timeline: ModeTimeline;
  figure: (name: string) => number | null;
}

const EARNEST_SHARE = 0.15;

/** Works the case out. Nothing here judges. */
export function buildCase({ setup, seen }: CrossCheckInput): Context {
  const figure = (name: string): number | null => {
    const value = seen.figures[name];
    return value === undefined || value === null || !Number.isFinite(value) ? null : value;
  };
  const measured = {
    meanVoltageV: figure('meanVoltageV'),
    meanCurrentA: figure('meanCurrentA'),
  };
  const point = workingPoint(setup, measured);
  const bounds = modeBoundaries(setup, point.currentA);
  const feedCurrentA = currentFromFeed(setup);
  const setV = setVoltageAtFeeder(setup, point.currentA);
  const measuredV = point.voltageMeasured ? point.voltageV : null;
  const measuredI = point.currentMeasured ? point.currentA : null;
  const judged = {
    voltageV: narrowed(setV, measuredV),
    currentA: narrowed(feedCurrentA, measuredI),
  };
  const stated = setup.source;
  const unknownPlace =
    measured.meanVoltageV !== null &&
    setup.traceVoltsAt === null &&
    setup.arcVoltsV === null &&
    setup.feederVoltsV === null;
  return {
    setup,
    seen,
    modes: earnestModes(seen),
    bounds,
    point,
    judged,
    voltsBy: voltsBy(judged.voltageV, measuredV, unknownPlace),
    permitted: permits(judged, bounds, stated),
    permittedAtPoint: permits(point, bounds, stated),
    shares: sharesOf(judged, bounds, stated),
    expected: expectedOf(setup, seen, point, bounds.map),
    feedCurrentA,
    measuredA: setup.measuredCurrentA ?? measured.meanCurrentA,
    voltageAstray: setV !== null && measuredV !== null && !overlap(setV, measuredV),
    losses: tellLosses(setup, measured.meanVoltageV, point.currentA ?? ANY_CURRENT),
    timeline: modeTimeline(seen.segments),
    figure,
  };
}

/** The measured range where it agrees with the stated one or stands alone, else the stated one. */
function narrowed(stated: Range | null, measured: Range | null): Range | null {
  if (stated === null || measured === null) return stated ?? measured;
  return overlap(stated, measured) ? measured : stated;
}

function voltsBy(
  judged: Range | null,
  measured: Range | null,
  unknownPlace: boolean,
): Context['voltsBy'] {
  if (judged === null) return null;
  if (judged !== measured) return 'set';
  return unknownPlace ? 'place-unknown' : 'measured';
}

function earnestModes({ mode, shareOfArcTime }: Seen): Mode[] {
  if (mode === null) return [];
  if (mode !== 'mixed') return [mode];
  return MODES.filter((one) => (shareOfArcTime?.[one] ?? 0) >= EARNEST_SHARE).sort(
    (a, b) => (shareOfArcTime?.[b] ?? 0) - (shareOfArcTime?.[a] ?? 0),
  );
}
