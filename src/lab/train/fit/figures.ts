import { createRandom, MODES } from '../../../core/index.js';
import { calibrate, type FittedModel } from '../../../model/index.js';
import {
  accuracyOf,
  bootstrap,
  brierScore,
  calibrationError,
  type ForecastCase,
  type Interval,
  logLoss,
} from '../../evaluate/index.js';
import type { DetectedRun } from './fit-arc-classifier.js';
import type { HeldOutRun } from './fit-model.js';

/** What held-out scorers reached on a group of runs. */
export interface GroupFigures {
  group: string;
  runs: number;
  unambiguousRuns: number;
  /** Accuracy of the likeliest mode on unambiguous runs, whether or not the answer would be given. */
  accuracy: Interval | null;
  /** The same with an answer below the default threshold (`unsure`) counted as a miss. */
  recall: number | null;
  /** Share of unambiguous runs answered at the default threshold, and the accuracy of those. */
  coverage: number | null;
  accuracyOfAnswered: number | null;
  brier: number | null;
  logLoss: number | null;
  /** Only for 300 runs or more: the figure is noise below. */
  calibrationError: Interval | null;
}

/** Confidence from which an answer is given by default. */
const ANSWER = 0.6;
/** Fewest runs for a calibration error. */
const CALIBRATION_RUNS = 300;

/** Figures for all runs together and for each family, mode and condition. */
export function heldOutFigures(heldOut: readonly HeldOutRun[], model: FittedModel): GroupFigures[] {
  const groups = new Map<string, HeldOutRun[]>([['all', [...heldOut]]]);
  for (const one of heldOut)
    for (const name of [`family ${one.run.family}`, `mode ${one.mode}`, ...one.run.conditions])
      groups.set(name, [...(groups.get(name) ?? []), one]);
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([group, runs]) => groupFigures(group, runs, model));
}

function groupFigures(
  group: string,
  runs: readonly HeldOutRun[],
  model: FittedModel,
): GroupFigures {
  const cases = runs.map((one) => toCase(one, model));
  const clear = runs.filter((one) => one.run.unambiguous).map((one) => toCase(one, model));
  const answered = clear.filter((one) => Math.max(...one.probabilities) >= ANSWER);
  const random = createRandom(`figures ${group}`);
  return {
    group,
    runs: runs.length,
    unambiguousRuns: clear.length,
    accuracy: rounded(bootstrap(clear, accuracyOf, random, { draws: 400 })),
    recall:
      clear.length > 0
        ? round(((accuracyOf(answered) ?? 0) * answered.length) / clear.length)
        : null,
    coverage: clear.length > 0 ? round(answered.length / clear.length) : null,
    accuracyOfAnswered: round(accuracyOf(answered)),
    brier: round(brierScore(cases)),
    logLoss: round(logLoss(cases)),
    calibrationError:
      cases.length >= CALIBRATION_RUNS
        ? rounded(bootstrap(cases, calibrationError, random, { draws: 400 }))
        : null,
  };
}

function toCase({ scores, mode }: HeldOutRun, model: FittedModel): ForecastCase {
  return {
    probabilities: Array.from(calibrate(model.runCalibration, scores)),
    truth: MODES.indexOf(mode),
  };
}

/** How many arcs and other recordings pass at a threshold of the gate. */
export interface ArcCurvePoint {
  threshold: number;
  arcsPassed: number;
  othersPassed: number;
}

/** The price of refusing other sounds: shares passed over the threshold. */
export function arcCurve(
  gated: readonly DetectedRun[],
  thresholds: readonly number[],
): ArcCurvePoint[] {
  const arcs = gated.filter((one) => one.arc);
  const others = gated.filter((one) => !one.arc);
  const share = (runs: readonly DetectedRun[], threshold: number) =>
    round(runs.filter((one) => one.best >= threshold).length / runs.length) ?? 0;
  return thresholds.map((threshold) => ({
    threshold,
    arcsPassed: share(arcs, threshold),
    othersPassed: share(others, threshold),
  }));
}

function rounded(interval: Interval | null): Interval | null {
  if (!interval) return null;
  const { value, low, high } = interval;
  return { value: round(value) ?? 0, low: round(low) ?? 0, high: round(high) ?? 0 };
}

function round(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(4));
}
