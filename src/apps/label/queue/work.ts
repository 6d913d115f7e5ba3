import { resolve } from 'node:path';
import type { Job, UnrecoverableError, Worker } from 'bullmq';
import { ArcError } from '../../../core/index.js';
import { modelFiles } from '../../terminal/flags/model-flag.js';
import { loadEngine, modelsOf } from '../engine-module.js';
import { workersOf } from '../label-options.js';
import { progressOnStderr } from '../label-progress.js';
import type { LabelPlan } from '../plan.js';
import { createPool, type Pool } from '../pool.js';
import type { LabelOutcome } from '../record.js';
import { PASSING } from '../reuse.js';
import { QUEUE_PATIENCE_S, secondsOf } from '../seconds.js';
import { readQueueAddress, sayAddress } from './address.js';
import { connected, loadBull, probe, queueName } from './connect.js';
import { type LabelJob, parseJob } from './job.js';
import { atMost, createPatience, type Patience } from './patience.js';

/** Hosts that die with an input on their hands before that input is given up. */
const MOST_STALLED = 3;
const STALLED_AFTER_S = 30;
const CLOSE_MS = 5000;
const IDLE_CHECK_MS = 200;

/**
 * Takes inputs from a queue until told to stop, labels them in threads, and puts the results back. What
 * is under way when a worker is killed goes to another one after `--stalled-after`.
 */
export async function workCommand(
  options: Readonly<Record<string, unknown>>,
  engineUrl: string | null = null,
): Promise<void> {
  const workers = workersOf(options['workers'] as string | undefined);
  const idleS = secondsOf('--stop-when-idle', options['stopWhenIdle'], undefined);
  const stalledMs = 1000 * secondsOf('--stalled-after', options['stalledAfter'], STALLED_AFTER_S);
  const patienceS = secondsOf('--queue-patience', options['queuePatience'], QUEUE_PATIENCE_S);
  const models = modelFiles(options).map((one) => resolve(one));
  const address = await readQueueAddress(
    String(options['queue']),
    options['queuePasswordFile'] as string | undefined,
    process.env,
  );
  if (typeof options['root'] === 'string') enter(options['root']);
  const { Worker, UnrecoverableError } = await loadBull();
  const ownModels = models.length > 0 ? { models } : {};
  const name = queueName(await modelsOf(ownModels, await loadEngine(engineUrl)));
  await probe(address);
  const patience = createPatience(address, patienceS);
  const pool = createPool(workers, engineUrl);
  const progress = progressOnStderr(undefined);
  const idle = { sinceMs: performance.now(), active: 0 };
  const worker = new Worker<LabelJob, LabelOutcome>(
    name,
    async (job) => {
      idle.active += 1;
      try {
        const outcome = await labelJob(job, pool, ownModels, UnrecoverableError);
        progress.count(outcome.status, true);
        return outcome;
      } finally {
        idle.active -= 1;
        idle.sinceMs = performance.now();
      }
    },
    {
      connection: patience.connection,
      concurrency: workers,
      lockDuration: stalledMs,
      stalledInterval: stalledMs,
      maxStalledCount: MOST_STALLED,
    },
  );
  try {
    await Promise.race([connected([worker], address), patience.lost]);
    process.stderr.write(
      `${sayAddress(address)}: working, ${workers} at a time. Ctrl+C ends it.\n`,
    );
    const done = () => idleS !== undefined && isIdle(idle, idleS);
    await untilStopped(done, patience.lost);
    await Promise.race([worker.close(), patience.lost]);
  } finally {
    progress.clear();
    await stop(worker, pool, patience);
  }
}

/** An input whose failure may be the fault of this host goes back, to be tried again elsewhere. */
async function labelJob(
  job: Job<LabelJob, LabelOutcome>,
  pool: Pool,
  ownModels: Pick<LabelPlan, 'models'>,
  Unrecoverable: typeof UnrecoverableError,
): Promise<LabelOutcome> {
  let request: LabelJob;
  try {
    request = parseJob(job.data);
  } catch (error) {
    throw new Unrecoverable(`not a job of this program: ${String(error)}`);
  }
  const outcome = await pool.run(request.task, { ...request.plan, ...ownModels });
  const last = job.attemptsMade + 1 >= (job.opts.attempts ?? 1);
  const passing = outcome.errorCode !== null && PASSING.includes(outcome.errorCode);
  if (passing && !last) throw new Error(`${outcome.errorCode}: ${request.task.path}`);
  return outcome;
}

/** Waits for Ctrl+C, a scheduler's TERM, or the end of the work. Rejects when `lost` does. */
async function untilStopped(done: () => boolean, lost: Promise<never>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  let stop: () => void = () => {};
  const stopped = new Promise<void>((tell) => {
    stop = tell;
    timer = setInterval(() => done() && tell(), IDLE_CHECK_MS);
  });
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
  try {
    await Promise.race([stopped, lost]);
  } finally {
    clearInterval(timer);
    process.off('SIGINT', stop);
    process.off('SIGTERM', stop);
  }
}

function isIdle(idle: { sinceMs: number; active: number }, afterS: number): boolean {
  return idle.active === 0 && performance.now() - idle.sinceMs > afterS * 1000;
}

/** Ends a worker that has finished what was under way, or whose Redis is gone: then nobody waits for it. */
async function stop(
  worker: Worker<LabelJob, LabelOutcome>,
  pool: Pool,
  patience: Patience,
): Promise<void> {
  patience.giveUp();
  await pool.close();
  await atMost(CLOSE_MS, worker.close(true));
}

function enter(root: string): void {
  try {
    process.chdir(root);
  } catch (cause) {
    throw new ArcError({
      code: 'bad-root',
      what: `--root ${root} cannot be entered.`,
      expected: 'the folder from which the paths of the inputs are seen',
      todo: 'Correct it, or leave it out where paths are absolute.',
      cause,
    });
  }
}
