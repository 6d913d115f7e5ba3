import { runBatch } from '../../analysis/index.js';
import type { Journal } from './journal.js';
import type { Place } from './journal-lines.js';
import type { LabelProgress } from './label-progress.js';
import type { LabelPlan, LabelTask } from './plan.js';
import type { LabelOutcome } from './record.js';
import { isReusable } from './reuse.js';
import { LeftBehind, type Runner } from './runner.js';

/** What a batch of files needs. */
export interface Gathering {
  tasks: readonly LabelTask[];
  plan: LabelPlan;
  journal: Journal;
  runner: Runner;
  progress: LabelProgress;
  stopped: () => boolean;
}

/** Where the record of each task stands; `undefined` for those not begun before a stop. */
export interface Gathered {
  places: (Place | undefined)[];
  /** Tasks that an earlier run had labelled. */
  reused: number;
  complete: boolean;
}

/** Sees that the journal holds a valid record for every task, labelling those that lack one. */
export async function labelAll(given: Gathering): Promise<Gathered> {
  const { tasks, plan, journal, runner, progress } = given;
  const places: (Place | undefined)[] = new Array(tasks.length).fill(undefined);
  let reused = 0;
  const work = async (task: LabelTask): Promise<LabelOutcome | Place> => {
    const earlier = journal.remembered.get(task.path);
    if (earlier && (await isReusable(earlier, task, plan))) return earlier.place;
    return runner.run(task);
  };
  const batch = runBatch(tasks, work, {
    limit: runner.parallel,
    ordered: false,
    stopped: given.stopped,
  });
  try {
    for await (const { index, item, value } of batch) {
      if ('line' in value) {
        places[index] = await journal.append(value.line);
        await runner.written?.(item);
        progress.count(value.status, true);
      } else {
        places[index] = value;
        reused += 1;
        progress.count((journal.remembered.get(item.path)?.status ?? 'ok') as 'ok', false);
      }
    }
  } catch (error) {
    // After a stop nobody waits for other hosts any more; anything else is a real trouble.
    if (!(error instanceof LeftBehind)) throw error;
  }
  await journal.sync();
  return { places, reused, complete: places.every((place) => place !== undefined) };
}
