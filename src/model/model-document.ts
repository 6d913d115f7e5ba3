import * as z from 'zod/mini';
import { ArcError, MODES } from '../core/index.js';
import type { FeatureSet } from '../features/index.js';
import { arcSignVectorLength } from './arc-classifier.js';
import { calibrationSchema } from './calibration.js';
import { noveltySchema } from './novelty.js';
import { runVectorLength } from './run-vector.js';
import { type Scorer, scorerSchema } from './scorer.js';

/** Format of the model document. */
export const MODEL_SCHEMA_VERSION = '1';

/** Everything the judgement needs beside code: plain data, checked before use, never run. */
export const modelSchema = z.object({
  kind: z.literal('arc-transfer-model'),
  schemaVersion: z.literal(MODEL_SCHEMA_VERSION),
  id: z.string().check(z.maxLength(200)),
  version: z.string().check(z.maxLength(50)),
  featureSet: z.object({
    id: z.string(),
    version: z.int(),
    features: z.array(z.string()).check(z.maxLength(999)),
  }),
  /** In this order and no other: scores are read by place. */
  modes: z.array(z.enum(MODES)).check(
    z.length(MODES.length),
    z.refine((modes) => modes.every((mode, k) => mode === MODES[k]), {
      error: `modes in the order ${MODES.join(', ')}`,
    }),
  ),
  /** Mode scores of a window, in the order of `modes`. */
  modeScorer: scorerSchema,
  /** From a window's scores to probabilities. */
  windowCalibration: calibrationSchema,
  /** Mode scores of a run from the means and spreads of its window features, see `run-vector.ts`. */
  runScorer: scorerSchema,
  /** From a run's scores to probabilities. */
  runCalibration: calibrationSchema,
  /** Arc against everything else; null for traces, where the arc shows in the voltage itself. */
  gate: z.nullable(
    z.object({
      /** Arc score of a window. */
      scorer: scorerSchema,
      /** Log-odds of a stretch from its signs, see `stretch-gate.ts`. */
      stretch: scorerSchema,
      calibration: calibrationSchema,
      /** Stretch score from which a mode may be named. */
      acceptScore: z.number(),
      /** Below it the stretch is no arc; between the two the answer is `unsure`. */
      rejectScore: z.number(),
    }),
  ),
  novelty: noveltySchema,
  /** How it was made and what was measured; for people and the model card. */
  training: z.record(z.string(), z.unknown()),
});
export type Model = z.infer<typeof modelSchema>;

/** Documents that were checked, and what they were checked against, so that a batch checks each once. */
const checked = new WeakMap<object, { model: Model; featureSet: FeatureSet }>();

/**
 * Checks a model document against the schema and against the feature set it will be used with. A document
 * must not be changed after it was checked.
 * @throws ArcError `bad-model`, `model-mismatch`
 */
export function parseModel(document: unknown, featureSet: FeatureSet): Model {
  const known = typeof document === 'object' && document !== null ? checked.get(document) : null;
  if (known?.featureSet === featureSet) return known.model;
  const model = known?.model ?? validModel(document);
  checkFit(model, featureSet);
  checked.set(document as object, { model, featureSet });
  return model;
}

function validModel(document: unknown): Model {
  const parsed = modelSchema.safeParse(document);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    throw new ArcError({
      code: 'bad-model',
      what: `The model document is not valid at "${issue?.path.join('.') ?? ''}": ${issue?.message ?? ''}.`,
      expected: 'a document written by `arc-transfer fit`',
      todo: 'Use the shipped model (leave --model out) or fit again.',
      cause: parsed.error,
    });
  }
  return parsed.data;
}

function checkFit(model: Model, featureSet: FeatureSet): void {
  const names = featureSet.features.map((feature) => feature.id).join(',');
  if (model.featureSet.id !== featureSet.id || model.featureSet.features.join(',') !== names)
    throw new ArcError({
      code: 'model-mismatch',
      what: `The model "${model.id}" was fitted on features "${model.featureSet.id}" version ${model.featureSet.version}.`,
      expected: `"${featureSet.id}" version ${featureSet.version}, as this program computes them`,
      todo: 'Fit the model again with this version.',
    });
  checkWidths(model, featureSet.features.length);
}

/** Lists that are indexed by feature or mode must have that length, and no tree may ask beyond. */
function checkWidths(model: Model, features: number): void {
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
