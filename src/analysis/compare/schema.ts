import * as z from 'zod';

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
  unit: z.string(),
  before: z.number(),
  after: z.number(),
  difference: z.number(),
  /** Difference over `before`; null where that is 0. */
  relative: z.number().nullable(),
  /** Interval of the difference; null where the recordings do not show their own spread. */
  interval: z
    .object({ low: z.number(), high: z.number(), level: z.number(), how: z.string() })
    .nullable(),
  /** Probability of such a difference by chance within the runs, corrected for the number of figures. */
  p: z.number().nullable(),
  /** Null where it cannot be told. */
  moreThanChance: z.boolean().nullable(),
});

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
  schemaVersion: z.literal('1.0'),
  before: side,
  after: side,
  mode: z.object({ answer: z.enum(['same', 'changed', 'cannot-tell']), text: z.string() }),
  changes: z.array(change),
  /** Trend of the event rate within each run, Hz a minute; null where too short or not shown. */
  trends: z.object({ before: trend, after: trend }),
  notes: z.array(z.string()),
});

export type Comparison = z.infer<typeof comparisonSchema>;
export type Change = Comparison['changes'][number];
