import {
  CURRENT_FEATURES,
  SOUND_FEATURES,
  VOLTAGE_CURRENT_FEATURES,
  VOLTAGE_FEATURES,
} from '../../../features/index.js';
import { arcCurve, heldOutFigures } from '../fit/figures.js';
import { type FitOutcome, fitModel } from '../fit/fit-model.js';
import { FIT_DEFAULTS } from '../fit/fit-options.js';
import { opinionsOf } from '../pooling/opinions.js';
import { type LabelledRun, REAL } from './labelled-run.js';
import type { TrainingSets } from './make-runs.js';
import type { ShippedFit } from './pool-shipped.js';
import type { TrainingRecipe } from './recipe.js';

const FEATURE_SETS = {
  sound: SOUND_FEATURES,
  voltage: VOLTAGE_FEATURES,
  'voltage-current': VOLTAGE_CURRENT_FEATURES,
  current: CURRENT_FEATURES,
};

const GATE_THRESHOLDS = [-2, -1, 0, 1, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 8];

/** Version of the shipped models; raised with every new fit that is shipped. */
export const SHIPPED_VERSION = '1';

/**
 * Fits the model of one feature set on the runs of a recipe; the document carries the recipe and the
 * figures of the held-out scorers.
 */
export function fitShipped(
  set: keyof TrainingSets,
  runs: readonly LabelledRun[],
  nonArcs: readonly LabelledRun[],
  recipe: TrainingRecipe,
): ShippedFit {
  const sound = set === 'sound';
  const outcome = fitModel(FEATURE_SETS[set], runs, sound ? nonArcs : null, {
    ...FIT_DEFAULTS,
    id: `arc-transfer ${set}`,
    version: SHIPPED_VERSION,
    seed: recipe.seed,
  });
  const training = trainingRecord(outcome, runs, nonArcs, recipe, sound);
  return { model: { ...outcome.model, training }, opinions: opinionsOf(outcome) };
}

function trainingRecord(
  outcome: FitOutcome,
  runs: readonly LabelledRun[],
  nonArcs: readonly LabelledRun[],
  recipe: TrainingRecipe,
  sound: boolean,
): Record<string, unknown> {
  const real = nonArcs.filter((run) => run.conditions.includes(REAL)).length;
  return {
    evidence:
      'Simulated arcs only (src/lab/simulate); no openly licensed real recording of globular, spray or pulsed transfer was at hand.',
    recipe,
    runs: runs.length,
    ...(sound ? { soundsWithoutArc: nonArcs.length, realSoundsWithoutArc: real } : {}),
    heldOut: heldOutFigures(outcome.heldOut, outcome.model),
    ...(sound ? { gate: arcCurve(outcome.gated, GATE_THRESHOLDS) } : {}),
  };
}
