import { basename } from 'node:path';
import { runBatch } from '../../../analysis/index.js';
import { ArcError } from '../../../core/index.js';
import type { FeatureSet } from '../../../features/index.js';
import { loadShippedModel } from '../../../files/shipped-models.js';
import { type TruthRun, truthRuns } from '../../../lab/evaluate/index.js';
import { fitOwn, foldsOf, type LabelledRun, ownRuns } from '../../../lab/train/index.js';
import { parseModel } from '../../../model/parse/index.js';
import type { ReadOptions } from '../../../recording/index.js';
import { workersOf } from '../../label/label-options.js';
import { progressOnStderr } from '../../label/label-progress.js';
import { sayError } from '../../terminal/failure.js';
import { readReading } from '../../terminal/flags/reading-flags.js';
import { fileSink } from '../../terminal/sink.js';
import { visible } from '../../view/index.js';
import { comparisonText } from '../evaluate/comparison-text.js';
import { noLabels, placeOf, readLabelTable, remarksOn } from '../evaluate/read-labels.js';
import { type FitFlags, needed } from './flags.js';
import { openPool } from './pool.js';
import type { ReadOutcome } from './read-windows.js';
import type { FitTask } from './worker.js';

/** Windows of one kind of recording. */
interface Kind {
  featureSet: FeatureSet;
  runs: LabelledRun[];
}

/**
 * Fits a model on a lab's own labelled recordings and says how it does beside the shipped one.
 * A recording that cannot be read is said and left out.
 *
 * @throws ArcError for wrong use and for too little to learn from
 */
export async function fitFromLabels(flags: FitFlags): Promise<void> {
  const path = needed(flags, 'from', '--from');
  const out = needed(flags, 'out', '--out');
  const reading = readReading(flags);
  const workers = workersOf(flags['workers'] as string | undefined);
  const table = await readLabelTable(path);
  const truths = truthRuns(table.rows);
  if (truths.length === 0) throw noLabels(path);
  const folds = foldsOf(truths);
  const inputs = [path, ...truths.map(({ file }) => placeOf(path, file))];
  const sink = await fileSink(out, { overwrite: flags['overwrite'] === true, inputs });
  let done = false;
  try {
    for (const remark of remarksOn(table)) process.stderr.write(`${visible(remark)}\n`);
    const { kinds, lost } = await readAll(path, truths, folds, reading, workers);
    const { featureSet, runs } = oneKind(kinds, flags['set']);
    process.stderr.write(`fitting "${featureSet.id}" on ${runs.length} labelled runs\n`);
    const shipped = parseModel(await loadShippedModel(featureSet.id), featureSet);
    if (shipped.kind === 'arc-transfer-ear') throw heardByNetwork(featureSet.id);
    const { model, comparison } = fitOwn(featureSet, runs, shipped, basename(out, '.json'));
    await sink.write(`${JSON.stringify(model)}\n`);
    done = true;
    process.stderr.write(comparisonText(comparison));
    for (const note of model.training['notes'] as string[]) process.stderr.write(`${note}\n`);
    if (lost > 0) process.exitCode = 1;
  } finally {
    await sink.close(done);
  }
  process.stdout.write(`${out}\n`);
}

function heardByNetwork(featureSet: string): ArcError {
  return new ArcError({
    code: 'no-own-model',
    what: `"${featureSet}" recordings are judged by a network, which no list of labels can teach.`,
    expected: 'labelled recordings of voltage or current',
    todo: 'Log the voltage too, or compare the shipped answers with the labels by "evaluate".',
  });
}

/** Reads by several threads and keeps the order of the labels. */
async function readAll(
  table: string,
  truths: readonly TruthRun[],
  folds: ReadonlyMap<string, string>,
  reading: ReadOptions,
  workers: number,
): Promise<{ kinds: Kind[]; lost: number }> {
  const kinds = new Map<string, Kind>();
  const threads = Math.min(workers, truths.length);
  const pool = openPool(threads);
  const progress = progressOnStderr(truths.length);
  // A fault of the tool itself, or a thread that dies, costs its recording too and no other.
  const work = async ({ file }: TruthRun): Promise<ReadOutcome | { fault: unknown }> => {
    const task: FitTask = { recording: placeOf(table, file), reading };
    return pool.run(task).catch((fault: unknown) => ({ fault }));
  };
  let lost = 0;
  try {
    const batch = runBatch(truths, work, { limit: 2 * threads, ordered: true });
    for await (const { item: truth, value } of batch) {
      progress.count('windows' in value ? 'ok' : 'failed', true);
      if (!('windows' in value)) {
        lost++;
        progress.clear();
        sayError('failure' in value ? new ArcError(value.failure) : value.fault, truth.file);
        continue;
      }
      const { featureSet } = value.windows;
      const kind = kinds.get(featureSet.id) ?? { featureSet, runs: [] };
      kinds.set(featureSet.id, kind);
      kind.runs.push(...ownRuns(truth, value.windows, folds.get(truth.file)!));
    }
  } finally {
    progress.clear();
    await pool.destroy();
  }
  return { kinds: [...kinds.values()], lost };
}

/** A model is for one kind of recording; with several, the user says which. */
function oneKind(kinds: readonly Kind[], wanted: string | boolean | undefined): Kind {
  const chosen = kinds.filter((kind) => wanted === undefined || kind.featureSet.id === wanted);
  if (chosen[0] && chosen.length === 1) return chosen[0];
  const counts = kinds.map((kind) => `${kind.featureSet.id} (${kind.runs.length} runs)`).join(', ');
  throw new ArcError({
    code: 'several-kinds',
    what: `The labelled recordings are of these kinds: ${counts || 'none that could be read'}.`,
    expected: 'one kind, as a model is for one',
    todo: 'Choose one with --set, and fit the others by themselves.',
  });
}
