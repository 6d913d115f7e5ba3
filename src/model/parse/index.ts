import * as z from 'zod/mini';
import { ArcError, MODES } from '../../core/index.js';
import type { FeatureSet } from '../../features/index.js';
import type { EarModel } from '../ear/ear-document.js';
import { checkFit, type FittedModel, MODEL_SCHEMA_VERSION, type Model } from '../model-document.js';
import type { Tree } from '../tree-scorer.js';
import { earSchema } from './ear-schema.js';
import { noveltySchema } from './novelty-schema.js';

const NODE_LIMIT = 1023;
const FEATURE_LIMIT = 999;

/** Checked by hand: a model holds many thousand nodes, and a general checker would take longer than a weld. */
const treeSchema = z.custom<Tree>(isTree, {
  message: 'a tree: arrays of one length, finite numbers, children after their parents',
});

const numbers = z.array(z.number()).check(z.maxLength(999));
const classes = z.array(z.number()).check(z.minLength(1), z.maxLength(16));
const treeScorerSchema = z.object({
  kind: z.literal('trees'),
  bias: classes,
  trees: z
    .array(z.array(treeSchema).check(z.maxLength(2000)))
    .check(z.minLength(1), z.maxLength(16)),
});
const linearScorerSchema = z.object({
  kind: z.literal('linear'),
  mean: numbers,
  deviation: z.array(z.number().check(z.positive())).check(z.maxLength(999)),
  bias: classes,
  weight: z.array(numbers).check(z.minLength(1), z.maxLength(16)),
});
const scorerSchema = z.discriminatedUnion('kind', [treeScorerSchema, linearScorerSchema]);
const calibrationSchema = z.object({
  slope: z.number().check(z.positive()),
  offset: classes,
  method: z.string(),
  runs: z.int().check(z.nonnegative()),
});

/** Everything the judgement needs beside code: plain data, checked before use, never run. */
const fittedSchema: z.ZodMiniType<FittedModel> = z.object({
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
      /** Log-odds of a stretch from its signs, see `arc-classifier.ts`. */
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

const modelSchema: z.ZodMiniType<FittedModel | EarModel> = z.discriminatedUnion('kind', [
  fittedSchema as never,
  earSchema as never,
]);

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

function isTree(value: unknown): value is Tree {
  if (typeof value !== 'object' || value === null) return false;
  const { feature, threshold, left, right, absentLeft, value: response } = value as Partial<Tree>;
  if (!Array.isArray(feature) || feature.length < 1 || feature.length > NODE_LIMIT) return false;
  const n = feature.length;
  return (
    feature.every((one) => Number.isInteger(one) && one >= -1 && one <= FEATURE_LIMIT) &&
    isList(threshold, n, Number.isFinite) &&
    isList(response, n, Number.isFinite) &&
    isList(left, n, Number.isInteger) &&
    isList(right, n, Number.isInteger) &&
    isList(absentLeft, n, (one) => typeof one === 'boolean') &&
    childrenFollow(feature, left as number[], right as number[])
  );
}

function isList(value: unknown, length: number, holds: (one: unknown) => boolean): boolean {
  return Array.isArray(value) && value.length === length && value.every(holds);
}

/** Children stand after their parent, so no document can make a walk that never ends. */
function childrenFollow(feature: number[], left: number[], right: number[]): boolean {
  const isChild = (child: number, parent: number) => child > parent && child < feature.length;
  return feature.every((one, i) => one < 0 || (isChild(left[i]!, i) && isChild(right[i]!, i)));
}
