import * as z from 'zod';
import { parseSettings } from '../../../analysis/index.js';
import { fingerprint } from '../../../core/index.js';
import { fileKey } from '../file-key.js';
import type { LabelPlan, LabelTask } from '../plan.js';

const word = z.union([z.string(), z.number()]);
const channel = z.partialRecord(z.enum(['sound', 'voltage', 'current', 'time']), word);
const scale = z.partialRecord(z.enum(['voltage', 'current']), z.number());

/** What is in the queue. Whatever can write to the Redis can put anything there: all of it is checked. */
const jobSchema = z.strictObject({
  task: z.strictObject({
    path: z.string().min(1),
    origin: z.enum(['named', 'folder']),
    setup: z.record(z.string(), word),
    fingerprint: z.string(),
  }),
  plan: z.strictObject({
    settings: z.record(z.string(), z.number()),
    reading: z.strictObject({
      channelMap: channel.optional(),
      scale: scale.optional(),
      sampleRateHz: z.number().optional(),
    }),
    windows: z.boolean(),
  }),
});

export interface LabelJob {
  task: LabelTask;
  plan: LabelPlan;
}

/** A job from the queue. Throws for one that was not made by {@link queueRunner}. */
export function parseJob(data: unknown): LabelJob {
  const { task, plan } = jobSchema.parse(data);
  const { reading, windows } = plan;
  // JSON knows no undefined, so what is optional is there or absent.
  return {
    task,
    plan: { settings: parseSettings(plan.settings), reading: reading as never, windows },
  };
}

/** Same input, content and settings give the same name, so that no work is ever queued twice. */
export async function jobName(task: LabelTask, plan: LabelPlan): Promise<string> {
  const key = await fileKey(task.path);
  return `label-${fingerprint({ task, key, windows: plan.windows })}`;
}
