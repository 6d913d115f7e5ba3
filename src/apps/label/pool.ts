import { setFlagsFromString } from 'node:v8';
import { Piscina } from 'piscina';
import { ArcError } from '../../core/index.js';
import { packageFile } from '../../files/package-file.js';
import { tookTooLong, usualLimitS } from './file-limit.js';
import { lostOutcome } from './label-one.js';
import type { LabelPlan, LabelTask } from './plan.js';
import type { LabelOutcome } from './record.js';
import type { Runner } from './runner.js';
import { Turns } from './turns.js';
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

/**
 * A pool of `workers` threads; `engineUrl` null for the engine of the package. A file that takes longer than
 * `limitS` (by its size where not stated) is given up with its thread, and the others go on.
 */
export function createPool(workers: number, engineUrl: string | null, limitS?: number): Pool {
  // Read when a thread's heap is set up, and at no other time.
  setFlagsFromString(`--initial-heap-size=${FIRST_HEAP_MB}`);
  const pool = new Piscina({
    filename: packageFile('dist/apps/label/worker.js').href,
    minThreads: workers,
    maxThreads: workers,
    resourceLimits: { maxOldGenerationSizeMb: WORKER_HEAP_MB },
    recordTiming: false,
  });
  const turns = new Turns(workers);
  const label = async (task: LabelTask, plan: LabelPlan): Promise<LabelOutcome> => {
    const request: WorkerRequest = { task, plan, engineUrl };
    const mostS = limitS ?? (await usualLimitS(task.path));
    const abort = new AbortController();
    const timer = setTimeout(() => abort.abort(), 1000 * mostS);
    try {
      return (await pool.run(request, { signal: abort.signal })) as LabelOutcome;
    } catch (error) {
      const why = abort.signal.aborted
        ? tookTooLong(task.path, mostS)
        : workerDied(task.path, error);
      return lostOutcome(task, plan, why);
    } finally {
      clearTimeout(timer);
    }
  };
  return {
    // The time of a file begins when a thread is free for it.
    run: (task, plan) => turns.take(() => label(task, plan)),
    close: () => pool.destroy(),
  };
}

/** A pool as the one that does the work of a batch. */
export function poolRunner(
  plan: LabelPlan,
  workers: number,
  engineUrl: string | null,
  limitS?: number,
): Runner {
  const pool = createPool(workers, engineUrl, limitS);
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
