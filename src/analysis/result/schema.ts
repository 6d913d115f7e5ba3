import * as z from 'zod';
import { MODES, SOURCE_PROGRAMMES } from '../../core/index.js';
import type { FigureName } from '../../features/index.js';
import { messageSchema, paramsSchema } from '../../messages/schema.js';
import { crossCheckSchema } from '../../setup/check/schema.js';
import { READABLE_VERSIONS } from './version.js';

const seconds = z.number().min(0);
const share = z.number().min(0).max(1);
const mode = z.enum(MODES);
const note = z.object({ code: z.string(), message: z.string(), params: paramsSchema });

const companion = z.object({
  path: z.string(),
  sha256: z.string().nullable(),
  kind: z.literal('electrical'),
  sampleRateHz: z.number().positive(),
  durationS: seconds,
  /** Sound time minus trace time of the same event; null where nothing could be compared. */
  delayS: z.number().nullable(),
  /** From the delay, only where one clock ran both recorders. */
  distanceM: z.number().min(0).nullable(),
  /** Height of the peak over the rms of all lags. */
  correlation: z.number(),
  /** How much faster the sound's clock runs, parts per million; null where too short to tell. */
  driftPpm: z.number().nullable(),
  /** Whether both are taken as one run and judged together. */
  fused: z.boolean(),
  /** Whether both name the same mode; null where one names none. */
  agreed: z.boolean().nullable(),
  /** What the trace alone says. */
  alone: z.object({
    status: z.enum(['ok', 'no-arc', 'unsure']),
    mode: z.enum([...MODES, 'mixed']).nullable(),
    confidence: share.nullable(),
  }),
});

/** The one result document. Terminal, JSON, CSV and HTML are views of it. */
export const resultSchema = z.object({
  schemaVersion: z.enum(READABLE_VERSIONS),
  tool: z.object({ name: z.literal('arc-transfer'), version: z.string(), host: z.string() }),
  source: z.object({
    path: z.string(),
    sha256: z.string().nullable(),
    kind: z.enum(['sound', 'electrical']).nullable(),
    format: z.string().nullable(),
    sampleRateHz: z.number().positive().nullable(),
    durationS: seconds.nullable(),
    channels: z.array(z.object({ name: z.string(), quantity: z.string(), unit: z.string() })),
    notes: z.array(note),
  }),
  status: z.enum(['ok', 'no-arc', 'unsure', 'failed']),
  /** Why the status is what it is, in one sentence for a person. */
  statusReason: z.string(),
  /** The same by its code, so that it can be said in another language. Since 1.1. */
  statusReasonMessage: messageSchema.optional(),
  error: z
    .object({ code: z.string(), message: z.string(), expected: z.string(), todo: z.string() })
    .nullable(),
  mode: z.enum([...MODES, 'mixed']).nullable(),
  /** Calibrated probability that `mode` is right; null where no mode is named. */
  confidence: share.nullable(),
  sourceProgramme: z.enum(SOURCE_PROGRAMMES),
  /** Calibrated; given for `unsure` too; null where there was no arc, or too little to judge. */
  probabilities: z.record(mode, share).nullable(),
  /** Shares of the judged arc time by mode; they add up to 1 together with `undetermined`. */
  shareOfArcTime: z.record(z.enum([...MODES, 'undetermined']), share).nullable(),
  arcStretches: z.array(
    z.object({ startS: seconds, endS: seconds, openStart: z.boolean(), openEnd: z.boolean() }),
  ),
  segments: z.array(
    z.object({ startS: seconds, endS: seconds, mode: mode.nullable(), confidence: share }),
  ),
  /** Figures of the run keyed with their unit; null where this recording does not show them. */
  features: z.record(z.string(), z.number().nullable()),
  quality: z.array(
    z.object({ code: z.string(), share, message: z.string(), params: paramsSchema }),
  ),
  reasons: z.array(
    z.object({
      feature: z.string(),
      value: z.number().nullable(),
      unit: z.string(),
      speaksFor: mode.nullable(),
      weight: z.number(),
      text: z.string(),
      /** The sentence of `text`. Since 1.1. */
      code: z.string().optional(),
      params: paramsSchema,
    }),
  ),
  crossCheck: crossCheckSchema.nullable(),
  settings: z.object({ fingerprint: z.string(), values: z.record(z.string(), z.unknown()) }),
  model: z
    .object({
      id: z.string(),
      version: z.string(),
      fingerprint: z.string(),
      featureSet: z.string(),
    })
    .nullable(),
  /** What was done, in order: name of the step and what it was told. */
  steps: z.array(
    z.object({
      step: z.string(),
      detail: z.string(),
      /** The sentence of `detail`. Since 1.1. */
      code: z.string().optional(),
      params: paramsSchema,
    }),
  ),
  /** The modes that remain where no single one is named by ear, and how likely it is one of them. Since 1.1. */
  remainingModes: z
    .object({ modes: z.array(mode), probability: share })
    .nullable()
    .optional(),
  /** What would settle an open answer, in one sentence. Since 1.1. */
  wouldSettle: z.string().nullable().optional(),
  wouldSettleMessage: messageSchema.optional(),
  cautions: z.array(z.string()),
  /** One for each of `cautions`. Since 1.1. */
  cautionMessages: z.array(messageSchema).optional(),
  /** The trace that was given beside a sound of the same run. */
  companion: companion.optional(),
});

/** Figures have names of their own type; the schema takes any, so that older programs read newer documents. */
export type Result = Omit<z.infer<typeof resultSchema>, 'features'> & {
  features: Partial<Record<FigureName, number | null>>;
};
