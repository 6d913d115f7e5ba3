import { setFlagsFromString } from 'node:v8';
import { Piscina } from 'piscina';
import { ArcError } from '../../core/index.js';
import { packageFile } from '../../files/package-file.js';
import { lostOutcome } from './label-one.js';
import type { LabelPlan, LabelTask } from './plan.js';
import type { LabelOutcome } from './record.js';
import type { Runner } from './runner.js';
import type { WorkerRequest } from './worker.js';

/** Heap of one thread, beyond which its input fails instead of the machine. Samples are not on it. */
const WORKER_HEAP_MB = 1024;

/**
 * Heap that a thread starts with. A small one is searched for garbage several times a second while it grows,
 * by helper threads that the other workers then lack: a third of the time of a long batch.
 */
const FIRST_HEAP_MB = 256;

/** Threads that label one input each at a time. */
export interface Pool {
  run(task: LabelTask, plan: LabelPlan): Promise<LabelOutcome>;
  close(): Promise<void>;
}

/** A pool of `workers` threads; `engineUrl` null for the engine of the package. */
export function createPool(workers: number, engineUrl: string | null): Pool {
  // Read when a thread's heap is set up, and at no other time.
  setFlagsFromString(`--initial-heap-size=${FIRST_HEAP_MB}`);
  const pool = new Piscina({
    filename: packageFile('dist/apps/label/worker.js').href,
    minThreads: workers,
    maxThreads: workers,
    resourceLimits: { maxOldGenerationSizeMb: WORKER_HEAP_MB },
    recordTiming: false,
  });
  return {
    run: async (task, plan) => {
      const request: WorkerRequest = { task, plan, engineUrl };
      try {
        return (await pool.run(request)) as LabelOutcome;
      } catch (error) {
        return lostOutcome(task, plan, workerDied(task.path, error));
      }
    },
    close: () => pool.destroy(),
  };
}

/** A pool as the one that does the work of a batch. */
export function poolRunner(plan: LabelPlan, workers: number, engineUrl: string | null): Runner {
  const pool = createPool(workers, engineUrl);
  return {
    // One waits for each thread, so that none is idle while a result is written down.
    parallel: workers * 2,
    run: (task) => pool.run(task, plan),
    close: () => pool.close(),
  };
}

function workerDied(path: string, error: unknown): ArcError {
  const why = error instanceof Error ? error.message : String(error);
  return new ArcError({
    code: 'worker-died',
    what: `The worker that read ${path} came to an end: ${why}.`,
    expected: 'a worker that survives every recording',
    todo: 'Label this file alone; if it fails again, report it with the recording.',
    cause: error,
  });
}
