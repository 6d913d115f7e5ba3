import { ArcError, MODES, type Mode } from '../core/index.js';
import type { FeatureSet } from '../features/index.js';
import { arcSignVectorLength } from './arc-classifier.js';
import type { Calibration } from './calibration.js';
import { type EarModel, earOf } from './ear/ear-document.js';
import type { Novelty } from './novelty.js';
import { runVectorLength } from './run-vector.js';
import type { Scorer } from './scorer.js';

/** Format of the model document. */
export const MODEL_SCHEMA_VERSION = '1';

/** A model document: scorers that were fitted on features, or a network that listens. */
export type Model = FittedModel | EarModel;

/** Everything the judgement by features needs beside code: plain data, checked before use, never run. */
export interface FittedModel {
  kind: 'arc-transfer-model';
  schemaVersion: typeof MODEL_SCHEMA_VERSION;
  id: string;
  version: string;
  featureSet: { id: string; version: number; features: string[] };
  /** In this order and no other: scores are read by place. */
  modes: Mode[];
  /** Mode scores of a window, in the order of `modes`. */
  modeScorer: Scorer;
  /** From a window's scores to probabilities. */
  windowCalibration: Calibration;
  /** Mode scores of a run from the means and spreads of its window features, see `run-vector.ts`. */
  runScorer: Scorer;
  /** From a run's scores to probabilities. */
  runCalibration: Calibration;
  /** Arc against everything else; null for traces, where the arc shows in the voltage itself. */
  gate: {
    /** Arc score of a window. */
    scorer: Scorer;
    /** Log-odds of an arc interval from its signs, see `arc-classifier.ts`. */
    stretch: Scorer;
    calibration: Calibration;
    /** Score of an arc interval from which a mode may be named. */
    acceptScore: number;
    /** Below it the interval is no arc; between the two the answer is `unsure`. */
    rejectScore: number;
  } | null;
  novelty: Novelty;
  /** How it was made and what was measured; for people and the model card. */
  training: Record<string, unknown>;
}

/**
 * Refuses a model that was made for other features than this program computes.
 * @throws ArcError `model-mismatch`, `bad-model`, `bad-network`
 */
export function checkFit(model: Model, featureSet: FeatureSet): void {
  const names = featureSet.features.map((feature) => feature.id).join(',');
  if (model.featureSet.id !== featureSet.id || model.featureSet.features.join(',') !== names)
    throw new ArcError({
      code: 'model-mismatch',
      what: `The model "${model.id}" was fitted on features "${model.featureSet.id}" version ${model.featureSet.version}.`,
      expected: `"${featureSet.id}" version ${featureSet.version}, as this program computes them`,
      todo: 'Fit the model again with this version.',
    });
  if (model.kind === 'arc-transfer-ear') earOf(model);
  else checkWidths(model, featureSet.features.length);
}

/** Lists that are indexed by feature or mode must have that length, and no tree may ask beyond. */
function checkWidths(model: FittedModel, features: number): void {
  const gate = model.gate ? [model.gate.scorer] : [];
  const ok =
    [model.modeScorer, ...gate].every((scorer) => scorerFits(scorer, features)) &&
    (!model.gate || scorerFits(model.gate.stretch, arcSignVectorLength(features))) &&
    scorerFits(model.runScorer, runVectorLength(features)) &&
    model.runScorer.bias.length === MODES.length &&
    model.modeScorer.bias.length === MODES.length &&
    model.windowCalibration.offset.length === MODES.length &&
    model.runCalibration.offset.length === MODES.length &&
    model.novelty.mean.length === features &&
    model.novelty.deviation.length === features &&
    model.novelty.centres.every((centre) => centre.length === features) &&
    model.novelty.factor.length === (features * (features + 1)) / 2;
  if (ok) return;
  throw new ArcError({
    code: 'bad-model',
    what: `The model "${model.id}" holds lists that do not fit its ${features} features.`,
    expected: 'one value a feature and one score a mode',
    todo: 'Use the shipped model (leave --model out) or fit again.',
  });
}

function scorerFits(scorer: Scorer, features: number): boolean {
  return scorer.kind === 'trees'
    ? scorer.trees.length === scorer.bias.length &&
        scorer.trees.flat().every((tree) => tree.feature.every((f) => f < features))
    : scorer.mean.length === features &&
        scorer.deviation.length === features &&
        scorer.weight.length === scorer.bias.length &&
        scorer.weight.every((row) => row.length === features);
}
