import type { Job, Queue } from 'bullmq';
import { ArcError } from '../../../core/index.js';
import { lostOutcome } from '../label-one.js';
import type { LabelPlan, LabelTask } from '../plan.js';
import type { LabelOutcome } from '../record.js';
import { LeftBehind, type Runner } from '../runner.js';
import { type QueueAddress, readQueueAddress, sayAddress } from './address.js';
import { connected, loadBull, probe, queueName } from './connect.js';
import { jobName, type LabelJob } from './job.js';
import { parseOutcome } from './outcome.js';
import { atMost, createPatience } from './patience.js';

/** Jobs in the queue at most: enough for many hosts, and a few megabytes in Redis. */
const AHEAD = 256;
/** Tries of an input that failed for a reason of the host, each on whichever host is free. */
const ATTEMPTS = 3;
const RETRY_MS = 1000;
const CHECK_MS = 3000;
const CLOSE_MS = 5000;
/** Results that nobody fetched are kept for a week. */
const KEEP = { age: 7 * 24 * 3600 };

type LabelQueue = Queue<LabelJob, LabelOutcome>;

/** How to reach the queue. */
export interface QueueOptions {
  url: string;
  passwordFile: string | undefined;
  /** Seconds without an answer after which the queue is given up. */
  patienceS: number;
  /** Name of the models that all answers must be made by. */
  models: string;
}

/**
 * Lets the workers behind a queue do the work. Jobs are named by what they ask, so that one that was
 * killed and started again finds what was done meanwhile; a result leaves Redis only when written down.
 *
 * @throws ArcError `no-queue`, `no-queue-package`, and what the address has wrong; its runs reject with
 * `queue-lost`.
 */
export async function queueRunner(plan: LabelPlan, options: QueueOptions): Promise<Runner> {
  const address = await readQueueAddress(options.url, options.passwordFile, process.env);
  const { Queue, QueueEvents } = await loadBull();
  const name = queueName(options.models);
  await probe(address);
  const { connection, lost, giveUp } = createPatience(address, options.patienceS);
  const queue: LabelQueue = new Queue(name, { connection });
  const events = new QueueEvents(name, { connection });
  await Promise.race([connected([queue, events], address), lost]);
  // Where the models lie is a matter of each host; which they are is in the name of the queue.
  const { models: _, ...asked } = plan;
  const waiting: Waiting = { wake: new Map() };
  let leave: () => void = () => {};
  const left = new Promise<never>((_, reject) => {
    leave = () => reject(new LeftBehind());
  });
  left.catch(() => {});
  const names = new WeakMap<LabelTask, string>();
  const wake = ({ jobId }: { jobId: string }): void => waiting.wake.get(jobId)?.();
  events.on('completed', wake);
  events.on('failed', wake);
  // Events may be lost with a connection; asking now and then makes up for that.
  const watch = workerWatch(queue, address, () => waiting.wake.size > 0);
  const timer = setInterval(() => {
    wakeAll(waiting);
    void watch();
  }, CHECK_MS);
  const run = async (task: LabelTask): Promise<LabelOutcome> => {
    const id = await jobName(task, asked);
    names.set(task, id);
    return runJob(queue, waiting, id, task, asked);
  };
  return {
    parallel: AHEAD,
    run: (task) => Promise.race([run(task), left, lost]),
    written: async (task) => {
      const remove = async () => (await queue.getJob(names.get(task) ?? ''))?.remove();
      await atMost(CLOSE_MS, remove());
    },
    leave,
    close: async () => {
      clearInterval(timer);
      await atMost(CLOSE_MS, Promise.allSettled([queue.close(), events.close()]));
      giveUp();
    },
  };
}

/** Who waits for which job. */
interface Waiting {
  wake: Map<string, () => void>;
}

function wakeAll(waiting: Waiting): void {
  for (const wake of waiting.wake.values()) wake();
}

async function runJob(
  queue: LabelQueue,
  waiting: Waiting,
  id: string,
  task: LabelTask,
  plan: LabelPlan,
): Promise<LabelOutcome> {
  const earlier = await queue.getJob(id);
  // What failed in an earlier run gets another chance.
  if (earlier && (await earlier.isFailed())) await earlier.remove().catch(() => {});
  for (;;) {
    const changed = new Promise<void>((resolve) => waiting.wake.set(id, resolve));
    // Adding a job that is there already changes nothing; one that got lost is put in again.
    await queue.add('label', { task, plan }, jobOptions(id));
    const job = await queue.getJob(id);
    const outcome = job && (await outcomeOf(job, task, plan));
    if (outcome) {
      waiting.wake.delete(id);
      return outcome;
    }
    await changed;
  }
}

function jobOptions(id: string) {
  return {
    jobId: id,
    attempts: ATTEMPTS,
    backoff: { type: 'exponential', delay: RETRY_MS },
    removeOnComplete: KEEP,
    removeOnFail: KEEP,
  };
}

async function outcomeOf(
  job: Job<LabelJob, LabelOutcome>,
  task: LabelTask,
  plan: LabelPlan,
): Promise<LabelOutcome | undefined> {
  if (job.finishedOn === undefined) return undefined;
  // The reason of an earlier try stays with a job that was finished in a later one.
  if (job.returnvalue) return checked(job.returnvalue, task, plan);
  if (!(await job.isFailed())) return undefined;
  return lostOutcome(task, plan, workerLost(task.path, job.failedReason));
}

function checked(given: unknown, task: LabelTask, plan: LabelPlan): LabelOutcome {
  try {
    return parseOutcome(given, task);
  } catch (error) {
    const why = error instanceof Error ? error.message.slice(0, 200) : String(error);
    return lostOutcome(task, plan, workerLost(task.path, `what came back is no answer: ${why}`));
  }
}

/** Says how many workers there are whenever that changes, and that somebody should start one. */
function workerWatch(queue: LabelQueue, address: QueueAddress, busy: () => boolean) {
  let known = -1;
  return async (): Promise<void> => {
    // Some providers of Redis do not let clients be counted.
    const count = await queue.getWorkersCount().catch(() => known);
    if (count === known || !busy()) return;
    known = count;
    const hint =
      count === 0 ? '; start arc-transfer work, of this version and with the same models' : '';
    process.stderr.write(`${sayAddress(address)}: ${count} workers${hint}\n`);
  };
}

function workerLost(path: string, why: string): ArcError {
  return new ArcError({
    code: 'worker-lost',
    what: `No worker could finish ${path}: ${why}.`,
    expected: 'a worker that survives every recording and reads the same files',
    todo: 'Look at what the workers said; label this file alone.',
  });
}
