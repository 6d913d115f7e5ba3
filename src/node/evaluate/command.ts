import { basename } from 'node:path';
import { ArcError } from '../../core/index.js';
import {
  type Evaluation,
  evaluateRuns,
  evaluationPage,
  evaluationText,
  type TruthRun,
  truthRuns,
} from '../../evaluate/index.js';
import { parseSetup } from '../../procedure/index.js';
import type { Result } from '../../result/index.js';
import { classifyOne, type Job } from '../classify/classify-one.js';
import type { Engine } from '../classify/engine.js';
import { engineOf } from '../flags/model-flag.js';
import { readReading } from '../flags/reading-flags.js';
import { readSettings } from '../flags/setting-flags.js';
import { lookOf } from '../look.js';
import { writeOut } from '../output.js';
import { createProgress } from '../progress.js';
import { fileSink, type Sink } from '../sink.js';
import { placeOf, readLabelTable, remarksOn } from './read-labels.js';

/**
 * The whole command: table and options first, then the recordings one by one. A file that cannot be
 * read is a row of its own and a miss.
 *
 * @throws ArcError for wrong use, before any recording is read
 */
export async function evaluateCommand(
  path: string,
  options: Readonly<Record<string, unknown>>,
  engine?: Engine,
): Promise<void> {
  const settings = readSettings(options);
  const reading = readReading(options);
  const table = await readLabelTable(path);
  const truths = truthRuns(table.rows);
  if (truths.length === 0) throw noLabels(path);
  const out = typeof options['out'] === 'string' ? options['out'] : undefined;
  const page = out === undefined ? undefined : await fileSink(out, options['overwrite'] === true);
  try {
    for (const remark of remarksOn(table)) process.stderr.write(`${remark}\n`);
    const progress = createProgress(truths.length);
    const used = engine ?? (await engineOf(options));
    const job: Job = { engine: used, setup: parseSetup({}), settings, reading, progress };
    const results = await classifyAll(path, truths, job);
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

async function classifyAll(
  table: string,
  truths: readonly TruthRun[],
  job: Job,
): Promise<Result[]> {
  const results: Result[] = [];
  for (const { file } of truths) {
    const result = await classifyOne({ path: placeOf(table, file), origin: 'named' }, job);
    job.progress.clear();
    if (result) results.push(result);
  }
  return results;
}

async function write(
  evaluation: Evaluation,
  json: boolean,
  page: Sink | undefined,
  name: string,
): Promise<void> {
  await page?.write(evaluationPage(evaluation, name));
  await writeOut(
    json
      ? `${JSON.stringify(evaluation, null, 2)}\n`
      : evaluationText(evaluation, lookOf(process.stdout)),
  );
}

function noLabels(path: string): ArcError {
  return new ArcError({
    code: 'no-labels',
    what: `${path} holds no row with a label.`,
    expected: 'rows such as: weld-01.wav,spray',
    todo: 'Fill in the column "mode" (or "label").',
  });
}
