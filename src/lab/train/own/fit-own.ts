import { MODES } from '../../../core/index.js';
import type { FeatureSet } from '../../../features/index.js';
import type { FittedModel } from '../../../model/index.js';
import type { LabelledRun } from '../data/labelled-run.js';
import { fitModel } from '../fit/fit-model.js';
import { FIT_DEFAULTS, type FitOptions } from '../fit/fit-options.js';
import { compareModels, type ModelComparison } from './compare-models.js';
import { checkEnough, countRuns } from './own-runs.js';

/** A model of one's own, and how it does beside the shipped one. */
export interface OwnFit {
  model: FittedModel;
  comparison: ModelComparison;
}

const GATE_NOTE =
  'Arc against other sounds: taken from the shipped model unchanged, since recordings of arcs alone cannot teach it.';

/**
 * Fits a model on labelled recordings. Every group is scored by scorers fitted on the other groups, and
 * the probabilities are fitted on those scores; the document carries the comparison with the shipped model.
 *
 * @throws ArcError `too-few-runs`
 */
export function fitOwn(
  featureSet: FeatureSet,
  runs: readonly LabelledRun[],
  shipped: FittedModel,
  name: string,
  options: Partial<FitOptions> = {},
): OwnFit {
  checkEnough(runs);
  const outcome = fitModel(featureSet, runs, null, {
    ...FIT_DEFAULTS,
    id: name,
    version: '1',
    seed: 'own labels',
    ...options,
  });
  const comparison = compareModels(outcome.heldOut, shipped);
  const training = {
    evidence: 'Recordings labelled by their owner.',
    labels: countRuns(runs),
    groups: [...new Set(runs.map((run) => run.family))].sort(),
    shipped: { id: shipped.id, version: shipped.version },
    comparison,
    notes: [...(shipped.gate ? [GATE_NOTE] : []), ...unseenNote(runs)],
  };
  return { model: { ...outcome.model, gate: shipped.gate, training }, comparison };
}

/** What the model cannot know, said to whoever reads its answers. */
function unseenNote(runs: readonly LabelledRun[]): string[] {
  const unseen = MODES.filter((mode) => runs.every((run) => run.mode !== mode));
  if (unseen.length === 0) return [];
  return [
    `Never seen in fitting: ${unseen.join(', ')}. Such an arc is called by another name, or unlike anything fitted.`,
  ];
}
