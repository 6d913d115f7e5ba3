import * as z from 'zod';
import { resultSchema } from '../../../analysis/result/index.js';
import type { LabelTask } from '../plan.js';
import type { LabelOutcome } from '../record.js';

const text = z.string();
const outcomeSchema = z.strictObject({
  line: text.regex(/^[^\r\n]*$/),
  status: z.enum(['ok', 'no-arc', 'unsure', 'failed', 'skipped']),
  errorCode: text.nullable(),
});
const recordSchema = z.strictObject({
  path: text,
  fingerprint: text,
  key: z.strictObject({ size: z.number(), modified: text, changed: text }).nullable(),
  result: resultSchema.nullable(),
  windows: z
    .array(
      z.strictObject({
        startS: z.number(),
        endS: z.number(),
        arcOn: z.boolean(),
        probabilities: z.array(z.number()),
        novelty: z.number(),
      }),
    )
    .optional(),
});

/**
 * What came back from a queue for a task. Whatever can write to the Redis can put anything there, and what is taken
 * ends in the table: all of it is checked. Throws for one that is no answer to `task`.
 */
export function parseOutcome(data: unknown, task: LabelTask): LabelOutcome {
  const outcome = outcomeSchema.parse(data);
  const { path, fingerprint, result } = recordSchema.parse(JSON.parse(outcome.line));
  const own =
    path === task.path &&
    fingerprint === task.fingerprint &&
    (result === null || result.source.path === task.path) &&
    outcome.status === (result?.status ?? 'skipped') &&
    outcome.errorCode === (result?.error?.code ?? null);
  if (!own) throw new Error('it answers another question');
  return outcome;
}
