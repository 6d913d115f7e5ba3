import * as z from 'zod';
import { messageSchema, paramsSchema } from '../../messages/schema.js';

/** Version of the document of a comparison. Fields only get added within one major version. */
export const COMPARISON_VERSION = '1.1';

const side = z.object({
  path: z.string(),
  status: z.string(),
  mode: z.string().nullable(),
  confidence: z.number().nullable(),
});

/** One figure in two runs. */
const change = z.object({
  name: z.string(),
  label: z.string(),
  /** The sentences of `label` and of `how`, like all fields so named: for another language. Since 1.1. */
  labelMessage: messageSchema.optional(),
  unit: z.string(),
  before: z.number(),
  after: z.number(),
  difference: z.number(),
  /** Difference over `before`; null where that is 0. */
  relative: z.number().nullable(),
  /** Interval of the difference; null where the recordings do not show their own spread. */
  interval: z
    .object({
      low: z.number(),
      high: z.number(),
      level: z.number(),
      how: z.string(),
      howMessage: messageSchema.optional(),
    })
    .nullable(),
  /** Probability of such a difference by chance within the runs, corrected for the number of figures. */
  p: z.number().nullable(),
  /** Null where it cannot be told. */
  moreThanChance: z.boolean().nullable(),
});

const rating = z.enum(['good', 'watch', 'bad']).nullable();

const trend = z
  .object({
    slopePerMin: z.number(),
    lowPerMin: z.number(),
    highPerMin: z.number(),
    clear: z.boolean(),
  })
  .nullable();

/** Two results held against each other. */
export const comparisonSchema = z.object({
  schemaVersion: z.enum(['1.0', COMPARISON_VERSION]),
  before: side,
  after: side,
  mode: z.object({
    answer: z.enum(['same', 'changed', 'cannot-tell']),
    text: z.string(),
    code: z.string().optional(),
    params: paramsSchema,
  }),
  changes: z.array(change),
  /** Trend of the event rate within each run, Hz a minute; null where too short or not shown. */
  trends: z.object({ before: trend, after: trend }),
  /** How the arc behaved in either run: the rating of each thing looked at; null where not rated. */
  condition: z.array(z.object({ name: z.string(), before: rating, after: rating })).optional(),
  notes: z.array(z.string()),
  /** One for each of `notes`. */
  noteMessages: z.array(messageSchema).optional(),
});

export type Comparison = z.infer<typeof comparisonSchema>;
export type Change = Comparison['changes'][number];
