import { createRandom, MODES, type Mode } from '../../../core/index.js';
import type { FeatureSet } from '../../../features/index.js';
import {
  type FittedModel,
  MODEL_SCHEMA_VERSION,
  type Scorer,
  score,
} from '../../../model/index.js';
import type { LabelledRun } from '../data/labelled-run.js';
import { modeRows } from '../data/to-rows.js';
import { boostTrees } from './boost.js';
import { type DetectedRun, fitArcClassifier } from './fit-arc-classifier.js';
import { fitCalibration, type ScoredCase } from './fit-calibration.js';
import { fitNovelty } from './fit-novelty.js';
import type { FitOptions } from './fit-options.js';
import type { Rows } from './rows.js';
import { runRows, scoreRun } from './run-rows.js';
import { shortened } from './shorten.js';

/** One run scored by a scorer that never saw its family. */
export interface HeldOutRun {
  run: LabelledRun;
  mode: Mode;
  scores: Float64Array;
}

export interface FitOutcome {
  model: FittedModel;
  heldOut: HeldOutRun[];
  /** Recordings as held-out gates saw them; empty without a gate. */
  gated: DetectedRun[];
}

/**
 * Fits scorers, calibration and novelty. Calibration is cross-fitted: every family is scored by scorers
 * fitted on the other families, and the probabilities are fitted on those scores, so they speak of
 * ground the scorer had not seen. The shipped scorers are then fitted on all families.
 */
export function fitModel(
  featureSet: FeatureSet,
  runs: readonly LabelledRun[],
  nonArcs: readonly LabelledRun[] | null,
  options: FitOptions,
): FitOutcome {
  const families = [...new Set(runs.map((run) => run.family))].sort();
  const heldOut: HeldOutRun[] = [];
  const windowCases: ScoredCase[] = [];
  for (const family of families) {
    const others = runs.filter((run) => run.family !== family);
    const own = runs.filter((run) => run.family === family);
    const scorers = fitScorers(others, options, family);
    heldOut.push(...scoreRuns(own, scorers));
    windowCases.push(...scoreWindows(modeRows(own), scorers.modeScorer));
  }
  const scorers = fitScorers(runs, options, 'all');
  const features = featureSet.features.map((feature) => feature.id);
  const gating = nonArcs ? fitArcClassifier(features, runs, nonArcs, options) : null;
  const model: FittedModel = {
    kind: 'arc-transfer-model',
    schemaVersion: MODEL_SCHEMA_VERSION,
    id: options.id,
    version: options.version,
    featureSet: {
      id: featureSet.id,
      version: featureSet.version,
      features,
    },
    modes: [...MODES],
    modeScorer: scorers.modeScorer,
    windowCalibration: fitCalibration(windowCases, METHOD),
    runScorer: scorers.runScorer,
    runCalibration: calibrateRuns(heldOut),
    gate: gating?.gate ?? null,
    novelty: fitNovelty(modeRows(runs), MODES.length, options.noveltyKeep),
    training: {},
  };
  return { model: shortened(model), heldOut, gated: gating?.held ?? [] };
}

const METHOD = 'log loss of softmax(slope·score + offset) on families that the scorer had not seen';

/** Probabilities of runs from held-out scores; every run weighs the same. */
export function calibrateRuns(heldOut: readonly HeldOutRun[]) {
  const cases = heldOut.map(({ scores, mode }) => ({
    scores,
    label: MODES.indexOf(mode),
    weight: 1,
  }));
  return fitCalibration(cases, METHOD);
}

type Scorers = Pick<FittedModel, 'modeScorer' | 'runScorer'>;

function fitScorers(runs: readonly LabelledRun[], options: FitOptions, fold: string): Scorers {
  const random = createRandom(`${options.seed}/${fold}`);
  return {
    modeScorer: boostTrees(modeRows(runs), MODES.length, options.window, random.fork('window')),
    runScorer: boostTrees(
      runRows(runs, random.fork('spans')),
      MODES.length,
      options.run,
      random.fork('run'),
    ),
  };
}

/** Whole runs of one mode with their centred scores. */
function scoreRuns(runs: readonly LabelledRun[], scorers: Scorers): HeldOutRun[] {
  return runs.flatMap((run) => {
    if (run.mode === null || run.mode === 'mixed') return [];
    const scores = scoreRun(run, run.mode, scorers);
    return scores ? [{ run, mode: run.mode, scores }] : [];
  });
}

function scoreWindows(rows: Rows, scorer: Scorer): ScoredCase[] {
  return rows.values.map((values, i) => ({
    scores: score(scorer, values),
    label: rows.label[i]!,
    weight: rows.weight[i]!,
  }));
}
