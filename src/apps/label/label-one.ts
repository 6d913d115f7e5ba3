import { settingsRecord } from '../../analysis/index.js';
import { failedResult } from '../../analysis/result/index.js';
import { parseSetup, type Setup } from '../../setup/index.js';
import { classifyOne, HOST } from '../terminal/judge/classify-one.js';
import type { Engine } from '../terminal/judge/engine.js';
import { fileKey } from './file-key.js';
import type { LabelPlan, LabelTask } from './plan.js';
import { type LabelOutcome, toOutcome, type WindowRecord } from './record.js';

const NO_PROGRESS = { watch: () => {}, clear: () => {} };

/** Labels one input. Whatever goes wrong with it is a record of status `failed`. */
export async function labelOne(
  task: LabelTask,
  plan: LabelPlan,
  engine: Engine,
): Promise<LabelOutcome> {
  const { path, origin, fingerprint } = task;
  // Asked before the bytes are read: a file that changes meanwhile is then labelled again next time.
  const key = await fileKey(path);
  const windows: WindowRecord[] = [];
  let setup: Setup;
  try {
    setup = parseSetup(task.setup);
  } catch (error) {
    return lostOutcome(task, plan, error);
  }
  const job = {
    engine: plan.windows ? listening(engine, windows) : engine,
    setup,
    settings: plan.settings,
    reading: plan.reading,
    progress: NO_PROGRESS,
  };
  const result = (await classifyOne({ path, origin }, job)) ?? null;
  const record = { path, fingerprint, key, result };
  return toOutcome(plan.windows ? { ...record, windows } : record);
}

/** The record of an input that was not read, for the reason given. */
export function lostOutcome(task: LabelTask, plan: LabelPlan, error: unknown): LabelOutcome {
  const { path, fingerprint } = task;
  const settings = settingsRecord(plan.settings);
  const result = failedResult({ path, sha256: null, host: HOST, settings, error });
  return toOutcome({ path, fingerprint, key: null, result });
}

/** The same engine, with what it says of each window written down. */
function listening(engine: Engine, windows: WindowRecord[]): Engine {
  return {
    ...engine,
    analyse: (recording, options) =>
      engine.analyse(recording, {
        ...options,
        onEvent: (event) => {
          if (event.type !== 'window') return;
          const { startS, endS, probabilities, novelty } = event.judgement;
          const { arcOn } = event;
          windows.push({ startS, endS, arcOn, probabilities: [...probabilities], novelty });
        },
      }),
  };
}
