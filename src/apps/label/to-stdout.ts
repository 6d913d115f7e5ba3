import { countResult, emptyTally, runBatch } from '../../analysis/index.js';
import { STDIN } from '../terminal/inputs.js';
import { stdoutIsOpen, writeOut } from '../terminal/output.js';
import { spareInputsOfStdout } from '../terminal/spare-inputs.js';
import { onStopSignal } from '../terminal/stop.js';
import { visible } from '../view/index.js';
import { tableOf } from './columns.js';
import { loadEngine, modelsOf } from './engine-module.js';
import type { LabelOptions } from './label-options.js';
import { progressOnStderr } from './label-progress.js';
import type { LabelTask } from './plan.js';
import type { LabelRecord } from './record.js';
import { rowWriter } from './row-writer.js';
import { LeftBehind } from './runner.js';
import { listedInputs } from './stdin-list.js';
import { summaryText } from './summary.js';
import { listTasks, taskMaker } from './tasks.js';
import type { MakeRunner } from './to-file.js';

/** Inputs under way for each that the runner can use: keeps all busy while a long one is waited for. */
const AHEAD = 8;

/** Rows to stdout as they come, in the order of the inputs, without a journal: a part of a pipe. */
export async function labelToStdout(
  given: readonly string[],
  options: LabelOptions,
  makeRunner: MakeRunner,
  engineUrl: string | null,
): Promise<void> {
  const models = await modelsOf(options.plan, await loadEngine(engineUrl));
  const source = await sourceOf(given, options, models);
  const table = tableOf(
    options.rows,
    { labelFirst: false, carried: source.carried },
    source.carriedOf,
  );
  const writer = await rowWriter(options.format, table, writeOut, 0);
  const tally = emptyTally();
  const stop = onStopSignal();
  const progress = progressOnStderr(source.total);
  const runner = await makeRunner(options.plan);
  stop.onStop(() => runner.leave?.());
  try {
    await writer.begin();
    const batch = runBatch(source.tasks, (task) => runner.run(task), {
      limit: runner.parallel * AHEAD,
      ordered: true,
      stopped: () => stop.stopped() || !stdoutIsOpen(),
    });
    for await (const { item, value } of batch) {
      progress.count(value.status, true);
      const record = JSON.parse(value.line) as LabelRecord;
      countResult(tally, record.result);
      await writer.rows(table.rowsOf(record));
      await runner.written?.(item);
    }
    await writer.end();
  } catch (error) {
    if (!(error instanceof LeftBehind)) throw error;
  } finally {
    progress.clear();
    stop.release();
    await runner.close();
  }
  process.stderr.write(summaryText(tally));
  if (tally.status.failed > 0 || stop.stopped()) process.exitCode = 1;
}

interface Source {
  tasks: Iterable<LabelTask> | AsyncIterable<LabelTask>;
  total: number | undefined;
  carried: string[];
  carriedOf(path: string): Readonly<Record<string, string>>;
}

/** A list on stdin is read as it comes; everything else is known beforehand. */
async function sourceOf(
  given: readonly string[],
  options: LabelOptions,
  models: string,
): Promise<Source> {
  if (!given.includes(STDIN) || options.shard || options.setupsPath) {
    const list = await listTasks(given, options, models);
    await spareInputsOfStdout(list.tasks.map(({ path }) => path));
    for (const remark of list.remarks) process.stderr.write(`${visible(remark)}\n`);
    return { ...list, total: list.tasks.length };
  }
  const taskOf = taskMaker(options, models);
  async function* tasks(): AsyncGenerator<LabelTask> {
    for await (const { path, setup } of listedInputs(process.stdin))
      yield taskOf({ path, origin: 'named' }, setup);
  }
  return { tasks: tasks(), total: undefined, carried: [], carriedOf: () => ({}) };
}
