import { createRandom } from '../../../core/index.js';
import { quantile } from '../../../dsp/index.js';
import {
  arcSignVector,
  type FittedModel,
  ruleScore,
  type Scorer,
  score,
} from '../../../model/index.js';
import { type LabelledRun, REAL, RERECORDED } from '../data/labelled-run.js';
import { arcRows } from '../data/to-rows.js';
import { arcIntervalRows } from './arc-interval-rows.js';
import { boostTrees } from './boost.js';
import { fitCalibration } from './fit-calibration.js';
import type { FitOptions } from './fit-options.js';
import { type TrackedRun, trackArcIntervals } from './track-arc-intervals.js';

/** A recording with the score of its likeliest stretch, by a scorer that had met none of them either. */
export interface DetectedRun extends TrackedRun {
  best: number;
}

/** Score of a recording in which no stretch was found. */
export const NONE = -12;

const FOLDS = 5;
/** The accepting threshold lies this far above all real recordings without an arc but these few. */
const MARGIN = 0.1;
/** Of sixty, one may lie above: else the luck of a single clip sets the threshold for everybody. */
const REAL_ABOVE = 1;
/** Share of all recordings without an arc that must stay below it. */
const REFUSED = 0.88;
/** Share of the arcs that may fall below the rejecting threshold. */
const REJECTED_ARCS = 0.1;

/**
 * The gate, and the recordings as its held-out versions saw them.
 * @param names names of the window features
 */
export function fitArcClassifier(
  names: readonly string[],
  runs: readonly LabelledRun[],
  nonArcs: readonly LabelledRun[],
  options: FitOptions,
): { gate: NonNullable<FittedModel['gate']>; held: DetectedRun[] } {
  const folds = foldsOf(runs, nonArcs);
  const tracked = trackHeldOut(runs, nonArcs, folds, options);
  const held = scoreHeldOut(names, tracked, folds, options);
  const arcs = held.filter((one) => one.arc).map((one) => one.best);
  const others = held.filter((one) => !one.arc).map((one) => one.best);
  const real = held.filter((one) => one.run.conditions.includes(REAL)).map((one) => one.best);
  const highest = real.sort((a, b) => b - a)[REAL_ABOVE] ?? NONE;
  const acceptScore = Math.max(quantile(others, REFUSED), highest + MARGIN);
  const random = createRandom(`${options.seed}/gate`);
  return {
    gate: {
      scorer: boostTrees(arcRows([...runs, ...nonArcs]), 1, options.gate, random.fork('window')),
      stretch: boostTrees(
        arcIntervalRows(tracked, random.fork('spans')),
        1,
        options.stretch,
        random.fork('stretch'),
      ),
      calibration: fitCalibration(
        held.map((one) => ({
          scores: Float64Array.of(one.best),
          label: one.arc ? 1 : 0,
          weight: 1 / (one.arc ? arcs.length : others.length),
        })),
        'log loss on families and kinds of sound that the gate had not seen, arcs and others even',
      ),
      acceptScore: round(acceptScore),
      rejectScore: round(Math.min(acceptScore, quantile(arcs, REJECTED_ARCS))),
    },
    held,
  };
}

export type FoldOf = (run: LabelledRun) => number;

/**
 * What a fold leaves out: of arcs a family of assumptions, of drawn sounds a whole kind, of real ones all that
 * comes from the same source. Real kinds are too few to do without one: six, of which rain is the hard one.
 */
export function foldsOf(runs: readonly LabelledRun[], nonArcs: readonly LabelledRun[]): FoldOf {
  const folds = new Map<string, number>();
  for (const part of [runs, nonArcs.filter((run) => !isReal(run)), nonArcs.filter(isReal)])
    [...new Set(part.map(groupOf))].sort().forEach((group, i) => void folds.set(group, i % FOLDS));
  return (run) => folds.get(groupOf(run))!;
}

function groupOf(run: LabelledRun): string {
  return isReal(run) ? sourceOf(run) : run.family;
}

function isReal({ conditions }: LabelledRun): boolean {
  return conditions.includes(REAL) || conditions.includes(RERECORDED);
}

/** Clips of one source are named alike up to the letter of the take: `kind/fold-source-take.ogg`. */
function sourceOf({ id }: LabelledRun): string {
  return id.slice(0, id.lastIndexOf('-'));
}

function trackHeldOut(
  runs: readonly LabelledRun[],
  nonArcs: readonly LabelledRun[],
  foldOf: FoldOf,
  options: FitOptions,
): TrackedRun[] {
  const all = [...runs, ...nonArcs];
  return Array.from({ length: FOLDS }, (_, fold) => {
    const scorer = boostTrees(
      arcRows(all.filter((run) => foldOf(run) !== fold)),
      1,
      options.gate,
      createRandom(`${options.seed}/gate/${fold}`),
    );
    return all
      .filter((run) => foldOf(run) === fold)
      .map((run) => ({
        run,
        arc: run.mode !== null,
        arcIntervals: trackArcIntervals(run, scorer),
      }));
  }).flat();
}

function scoreHeldOut(
  names: readonly string[],
  tracked: readonly TrackedRun[],
  foldOf: FoldOf,
  options: FitOptions,
): DetectedRun[] {
  return Array.from({ length: FOLDS }, (_, fold) => {
    const random = createRandom(`${options.seed}/stretch/${fold}`);
    const others = tracked.filter(({ run }) => foldOf(run) !== fold);
    const scorer = boostTrees(arcIntervalRows(others, random), 1, options.stretch, random);
    return tracked
      .filter(({ run }) => foldOf(run) === fold)
      .map((one) => ({ ...one, best: bestScore(one, scorer, names) }));
  }).flat();
}

/** Score of the likeliest arc among the arcIntervals of the recording's own class; {@link NONE} for none. */
export function bestScore(one: TrackedRun, stretch: Scorer, names: readonly string[]): number {
  return one.arcIntervals
    .filter(({ arc }) => arc === one.arc)
    .map(({ signs }) => score(stretch, arcSignVector(signs))[0]! + ruleScore(signs, names))
    .reduce((best, one) => Math.max(best, one), NONE);
}

function round(value: number): number {
  return Number(value.toPrecision(5));
}
