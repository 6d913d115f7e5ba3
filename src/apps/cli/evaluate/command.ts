import { basename } from 'node:path';
import { runBatch } from '../../../analysis/index.js';
import type { Result } from '../../../analysis/result/index.js';
import {
  type Evaluation,
  evaluateRuns,
  type TruthRun,
  truthRuns,
} from '../../../lab/evaluate/index.js';
import { workersOf } from '../../label/label-options.js';
import { progressOnStderr } from '../../label/label-progress.js';
import type { LabelPlan } from '../../label/plan.js';
import { poolRunner } from '../../label/pool.js';
import type { LabelRecord } from '../../label/record.js';
import { engineFor, modelFiles } from '../../terminal/flags/model-flag.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { readSettings } from '../../terminal/flags/setting-flags.js';
import { lookOf } from '../../terminal/look.js';
import { jsonForStdout, writeOut } from '../../terminal/output.js';
import { fileSink, type Sink } from '../../terminal/sink.js';
import { visible } from '../../view/index.js';
import { evaluationPage } from './page.js';
import { noLabels, placeOf, readLabelTable, remarksOn } from './read-labels.js';
import { evaluationText } from './text.js';

/**
 * The whole command: table and options first, then the recordings. A file that cannot be
 * read is a row of its own and a miss.
 *
 * @throws ArcError for wrong use, before any recording is read
 */
export async function evaluateCommand(
  path: string,
  options: Readonly<Record<string, unknown>>,
): Promise<void> {
  const settings = readSettings(options);
  const models = modelFiles(options);
  const plan: LabelPlan = {
    settings,
    reading: readReading(options),
    windows: false,
    ...(models.length > 0 ? { models } : {}),
  };
  const workers = workersOf(options['workers'] as string | undefined);
  // A model that cannot be used is said once, not for each recording.
  await engineFor(models);
  const table = await readLabelTable(path);
  const truths = truthRuns(table.rows);
  if (truths.length === 0) throw noLabels(path);
  const out = typeof options['out'] === 'string' ? options['out'] : undefined;
  const inputs = [path, ...truths.map(({ file }) => placeOf(path, file)), ...models];
  const rules = { overwrite: options['overwrite'] === true, inputs };
  const page = out === undefined ? undefined : await fileSink(out, rules);
  try {
    for (const remark of remarksOn(table)) process.stderr.write(`${visible(remark)}\n`);
    const results = await judgeAll(path, truths, plan, workers);
    const evaluation = evaluateRuns(truths, results, settings.mixedShare);
    await write(evaluation, options['json'] === true, page, basename(path));
    await page?.close(true);
    if (out !== undefined) process.stderr.write(`wrote ${out}\n`);
    if (evaluation.runs.failed > 0) process.exitCode = 1;
  } catch (error) {
    await page?.close(false);
    throw error;
  }
}

/** The answers in the order of the labels, by several threads. */
async function judgeAll(
  table: string,
  truths: readonly TruthRun[],
  plan: LabelPlan,
  workers: number,
): Promise<Result[]> {
  const runner = poolRunner(plan, Math.min(workers, truths.length), null);
  const progress = progressOnStderr(truths.length);
  const work = ({ file }: TruthRun) =>
    runner.run({ path: placeOf(table, file), origin: 'named', setup: {}, fingerprint: '' });
  const results: Result[] = [];
  try {
    const batch = runBatch(truths, work, { limit: runner.parallel, ordered: true });
    for await (const { value } of batch) {
      const { result } = JSON.parse(value.line) as LabelRecord;
      if (result) results.push(result);
      progress.count(value.status, true);
    }
    return results;
  } finally {
    progress.clear();
    await runner.close();
  }
}

async function write(
  evaluation: Evaluation,
  json: boolean,
  page: Sink | undefined,
  name: string,
): Promise<void> {
  await page?.write(evaluationPage(evaluation, name));
  await writeOut(
    json ? jsonForStdout(evaluation) : evaluationText(evaluation, lookOf(process.stdout)),
  );
}
