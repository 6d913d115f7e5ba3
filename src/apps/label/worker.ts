import { engineFor } from '../terminal/flags/model-flag.js';
import { loadEngine } from './engine-module.js';
import { labelOne } from './label-one.js';
import type { LabelPlan, LabelTask } from './plan.js';
import type { LabelOutcome } from './record.js';

/** What a thread of the pool is asked. */
export interface WorkerRequest {
  task: LabelTask;
  plan: LabelPlan;
  /** URL of the engine's module, null for the one of the package. */
  engineUrl: string | null;
}

/** Runs in a thread of the pool. Only a path comes in and only text goes out; samples stay here. */
export default async function labelInWorker(request: WorkerRequest): Promise<LabelOutcome> {
  const { models } = request.plan;
  const engine = models ? await engineFor(models) : (await loadEngine(request.engineUrl)).ENGINE;
  return labelOne(request.task, request.plan, engine);
}
