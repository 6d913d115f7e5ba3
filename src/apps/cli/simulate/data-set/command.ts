import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Piscina } from 'piscina';
import { ArcError, TOOL_VERSION } from '../../../../core/index.js';
import { packageFile } from '../../../../files/package-file.js';
import {
  DATA_SET_FORMAT,
  type DataSetHead,
  recipeDocument,
} from '../../../../lab/simulate/index.js';
import { workersOf } from '../../../label/label-options.js';
import { writeOut } from '../../../terminal/output.js';
import { numberOption } from '../number-option.js';
import { type ShardTask, shardName } from './shard.js';

type Options = Record<string, unknown>;

/** At most so many in a shard, and about so many bytes; what a second of sound with its parts and of traces takes. */
const MOST_PER_SHARD = 32;
const SHARD_BYTES = 26e6;
const SOUND_BYTES_PER_S = 120e3;
const TRACES_BYTES_PER_S = 80e3;
const SOUND_RATE_HZ = 16_000;
const MOST = 10_000_000;
/** Seconds of arc where none are asked for: up to so many. */
const USUAL_SECONDS = 4;

/** Draws a data set, or what is missing of it. The folder goes to stdout, progress to stderr. */
export async function dataSetCommand(folder: string, options: Options): Promise<void> {
  refuseOthers(options);
  const head = headOf(options);
  const workers = workersOf(options['workers'] as string | undefined);
  await mkdir(folder, { recursive: true });
  await claim(folder, head);
  const missing = tasksOf(folder, head).filter(
    (task) => !existsSync(join(folder, shardName(task))),
  );
  await drawAll(missing, workers);
  await writeOut(`${folder}\n`);
}

function headOf(options: Options): DataSetHead {
  const count = (name: string, low: number): number =>
    options[name] === undefined ? 0 : numberOption(options, name, { low, high: MOST, whole: true });
  const longest =
    options['seconds'] === undefined
      ? USUAL_SECONDS
      : numberOption(options, 'seconds', { low: 0.5, high: 30 });
  const soundsPerArc = numberOption(options, 'sounds', { low: 1, high: 16, whole: true });
  const traces = options['traces'] !== 'none';
  const bytesPerS = soundsPerArc * SOUND_BYTES_PER_S + (traces ? TRACES_BYTES_PER_S : 0);
  const fitting = Math.floor(SHARD_BYTES / (0.75 * longest * bytesPerS));
  const head: DataSetHead = {
    format: DATA_SET_FORMAT,
    version: TOOL_VERSION,
    seed: numberOption(options, 'seed', { low: 0, high: 2 ** 31, whole: true }),
    arcs: count('arcs', 0),
    others: count('others', 0),
    soundsPerArc,
    arcS: [longest / 2, longest],
    soundRateHz: SOUND_RATE_HZ,
    perShard: Math.max(1, Math.min(MOST_PER_SHARD, fitting)),
    traces,
  };
  if (head.arcs + head.others > 0) return head;
  throw new ArcError({
    code: 'empty-data-set',
    what: 'The data set was to hold nothing.',
    expected: '--arcs <n>, --others <n>, or both',
    todo: 'Say how many to draw.',
  });
}

/** Options of single recordings mean nothing here; left in silence they would be believed. */
function refuseOthers(options: Options): void {
  const names = ['mode', 'family', 'preset', 'acoustics', 'snr', 'codec', 'rate'];
  const name = names.find((one) => options[one] !== undefined);
  if (name === undefined) return;
  throw new ArcError({
    code: 'bad-option',
    what: `--${name} was given with --data-set.`,
    expected: 'modes, families, acoustics and chains drawn in turn',
    todo: `Leave --${name} out, or draw single recordings.`,
  });
}

/** Writes what was asked for; a folder that holds another data set is left alone. */
async function claim(folder: string, head: DataSetHead): Promise<void> {
  const path = join(folder, 'data-set.json');
  const text = `${JSON.stringify(head, null, 1)}\n`;
  const there = await readFile(path, 'utf8').catch(() => null);
  if (there === text) return;
  if (there !== null)
    throw new ArcError({
      code: 'other-data-set',
      what: `${folder} holds a data set that was drawn otherwise.`,
      expected: 'the same options and version as in its data-set.json, or a new folder',
      todo: 'Choose another folder, or repeat the options to draw what is missing.',
    });
  await writeFile(join(folder, 'recipe.json'), `${JSON.stringify(recipeDocument(), null, 1)}\n`);
  await writeFile(path, text);
}

function tasksOf(folder: string, head: DataSetHead): ShardTask[] {
  return (['arcs', 'others'] as const).flatMap((kind) =>
    Array.from({ length: Math.ceil(head[kind] / head.perShard) }, (_, shard) => ({
      folder,
      head,
      kind,
      shard,
    })),
  );
}

async function drawAll(tasks: readonly ShardTask[], workers: number): Promise<void> {
  if (tasks.length === 0) return;
  const threads = Math.min(workers, tasks.length);
  const pool = new Piscina({
    filename: packageFile('dist/apps/cli/simulate/data-set/worker.js').href,
    minThreads: threads,
    maxThreads: threads,
  });
  const startMs = performance.now();
  let drawn = 0;
  let done = 0;
  try {
    await Promise.all(
      tasks.map(async (task) => {
        drawn += (await pool.run(task)) as number;
        done++;
        const perS = drawn / ((performance.now() - startMs) / 1000);
        process.stderr.write(
          `${done} of ${tasks.length} shards, ${drawn} drawn, ${perS.toFixed(1)} a second\n`,
        );
      }),
    );
  } finally {
    await pool.destroy();
  }
}
