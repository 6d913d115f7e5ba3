import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { isArcError } from '../../core/index.js';
import { failInput } from '../terminal/failure.js';
import type { Engine } from '../terminal/judge/engine.js';
import type { RecordOptions } from '../terminal/records/record-flags.js';
import { onStopSignal } from '../terminal/stop.js';
import { visible } from '../view/index.js';
import { type Built, buildTable } from './build-table.js';
import { tableOf } from './columns.js';
import { loadEngine, modelsOf } from './engine-module.js';
import { Journal } from './journal.js';
import { lockJournal } from './journal-lock.js';
import { labelAll } from './label-all.js';
import type { LabelOptions } from './label-options.js';
import { progressOnStderr } from './label-progress.js';
import { spareRecordings } from './own-files.js';
import type { LabelPlan } from './plan.js';
import type { Runner } from './runner.js';
import { summaryText } from './summary.js';
import { listTasks, type TaskList } from './tasks.js';
import { fileExists } from './write-errors.js';

export type MakeRunner = (plan: LabelPlan) => Promise<Runner>;

const say = (text: string): void => void process.stderr.write(visible(text));

/**
 * Labels into a table, through a journal beside it. What goes wrong before the first recording is wrong
 * use and thrown; later trouble with the disk is said, with the journal left as it is.
 */
export async function labelToFile(
  given: readonly string[],
  options: LabelOptions & { out: string },
  makeRunner: MakeRunner,
  engineUrl: string | null,
): Promise<void> {
  const { out } = options;
  if (!options.overwrite && !options.resume && (await exists(out))) throw tableExists(out);
  const sheets = options.records && join(options.records.folder, 'records.csv');
  if (sheets && !options.overwrite && !options.resume && (await exists(sheets)))
    throw tableExists(sheets);
  const journalPath = `${out}.journal`;
  const engine = await loadEngine(engineUrl);
  const { ENGINE } = engine;
  const models = await modelsOf(options.plan, engine);
  const list = await listTasks(given, options, models);
  const paths = list.tasks.map(({ path }) => path);
  await spareRecordings(options, paths, list.leftOut, options.plan.models ?? []);
  const lock = await lockJournal(journalPath);
  try {
    const journal = await Journal.open(journalPath, options.overwrite);
    try {
      for (const remark of list.remarks) say(`${remark}\n`);
      if (journal.remembered.size > 0)
        say(`Going on from ${journalPath}: what is unchanged is not labelled again.\n`);
      await labelAndBuild(list, options, journal, makeRunner, ENGINE);
    } finally {
      await journal.close();
    }
  } finally {
    await lock.release();
  }
}

async function labelAndBuild(
  list: TaskList,
  options: LabelOptions & { out: string },
  journal: Journal,
  makeRunner: MakeRunner,
  engine: Engine,
): Promise<void> {
  const { out, format, plan } = options;
  const { tasks } = list;
  try {
    const gathered = await labelEverything(list, plan, journal, makeRunner);
    const places = gathered.places.flatMap((place) => (place ? [place] : []));
    if (!gathered.complete) {
      say(
        `Stopped: ${places.length} of ${tasks.length} are in ${journal.path}. Run the same again to go on.\n`,
      );
      process.exitCode = 1;
      return;
    }
    const labelFirst = options.rows === 'segments' && format === 'tsv';
    const table = tableOf(options.rows, { labelFirst, carried: list.carried }, list.carriedOf);
    const built = await buildTable(journal, places, { path: out, format, table });
    say(summaryText(built.tally));
    const reused = gathered.reused > 0 ? `, ${gathered.reused} of them labelled earlier` : '';
    say(`${out}: ${built.rows} rows from ${tasks.length} inputs${reused}.\n`);
    await writeExtras(built, places, list, options, journal, engine);
    await writeRecords(options.records, places, list, options, journal);
    if (built.tally.status.failed > 0 || built.tally.total === 0) process.exitCode = 1;
  } catch (error) {
    if (!isArcError(error)) throw error;
    failInput(error, out);
  }
}

async function labelEverything(
  list: TaskList,
  plan: LabelPlan,
  journal: Journal,
  makeRunner: MakeRunner,
) {
  const progress = progressOnStderr(list.tasks.length);
  const stop = onStopSignal();
  const runner = await makeRunner(plan);
  stop.onStop(() => runner.leave?.());
  try {
    return await labelAll({
      tasks: list.tasks,
      plan,
      journal,
      runner,
      progress,
      stopped: stop.stopped,
    });
  } finally {
    progress.clear();
    stop.release();
    await runner.close();
  }
}

async function writeExtras(
  built: Built,
  places: Parameters<typeof buildTable>[1],
  list: TaskList,
  options: LabelOptions,
  journal: Journal,
  engine: Engine,
): Promise<void> {
  if (options.tracks !== undefined) {
    const { writeTracks } = await import('./tracks.js');
    say(await writeTracks(options.tracks, journal, places, options.overwrite));
  }
  if (options.clips !== undefined) {
    const { writeClips } = await import('./clips.js');
    const reader = { engine, reading: options.plan.reading };
    say(await writeClips(options.clips, journal, built.doubtful, list, reader));
  }
}

async function writeRecords(
  asked: RecordOptions | undefined,
  places: Parameters<typeof buildTable>[1],
  list: TaskList,
  options: LabelOptions,
  journal: Journal,
): Promise<void> {
  if (!asked) return;
  const { RecordFolder } = await import('../terminal/records/record-folder.js');
  const overwrite = options.overwrite || options.resume;
  const inputs = list.tasks.map(({ path }) => path);
  const carried = { from: 'table' as const, read: (path: string) => carriedIds(list, path) };
  const readers = list.carried.length > 0 ? [...asked.readers, carried] : asked.readers;
  const folder = await RecordFolder.open({ ...asked, readers }, { overwrite, inputs });
  for (const place of places) {
    const { path, result } = await journal.read(place);
    if (result) await folder.add(result, list.statedOf(path));
  }
  await folder.close();
  say(`${folder.summary}\n`);
}

/** The user's own columns of the set-up table as identifiers; `welded_at` is the time. */
function carriedIds(list: TaskList, path: string) {
  const given = Object.entries(list.carriedOf(path)).filter(([, value]) => value !== '');
  const { welded_at: time = null, ...ids } = Object.fromEntries(given);
  return { ids, time };
}

async function exists(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}

function tableExists(out: string) {
  return fileExists(
    out,
    'Pass --resume to label only what is new or changed and write the table anew, --overwrite to label everything again, or choose another name.',
  );
}
