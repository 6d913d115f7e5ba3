import { availableParallelism } from 'node:os';
import { extname } from 'node:path';
import { ArcError, didYouMean } from '../../core/index.js';
import { modelFiles } from '../terminal/flags/model-flag.js';
import { readReading } from '../terminal/flags/reading-flags.js';
import { NOTHING_TOLD, readSettings } from '../terminal/flags/setting-flags.js';
import { type RawSetup, readRawSetup } from '../terminal/flags/setup-flags.js';
import type { RowKind } from './columns.js';
import type { LabelPlan } from './plan.js';
import type { TableFormat } from './row-writer.js';
import { QUEUE_PATIENCE_S, secondsOf } from './seconds.js';
import { parseShard, type Shard } from './shard.js';

/** The options of `label`, checked. */
export interface LabelOptions {
  plan: LabelPlan;
  /** Set-up that holds for every input. */
  setup: RawSetup;
  setupsPath: string | undefined;
  out: string | undefined;
  format: TableFormat;
  rows: RowKind;
  workers: number;
  shard: Shard | undefined;
  overwrite: boolean;
  resume: boolean;
  clips: string | undefined;
  tracks: string | undefined;
  /** Seconds after which one file is given up; undefined for what fits its size. */
  timeLimitS: number | undefined;
  queue: string | undefined;
  passwordFile: string | undefined;
  queuePatienceS: number;
}

const FORMATS = ['csv', 'tsv', 'ndjson', 'parquet'] as const;
const KINDS = ['runs', 'segments', 'windows'] as const;
const MOST_WORKERS = 256;

type Given = Readonly<Record<string, unknown>>;

/** Reads what commander parsed. @throws ArcError for wrong use. */
export async function readLabelOptions(given: Given): Promise<LabelOptions> {
  const out = text(given['out']);
  const rows = choice('--rows', given['rows'] ?? 'runs', KINDS);
  const format = formatOf(given, out);
  const shard = text(given['shard']);
  const clips = text(given['clips']);
  const tracks = text(given['tracks']);
  if (out === undefined && (format === 'parquet' || clips !== undefined || tracks !== undefined))
    throw wrong(
      'Without --out rows go to stdout as they come.',
      '--out with parquet, --clips and --tracks',
    );
  const models = modelFiles(given);
  const both = given['overwrite'] === true && given['resume'] === true;
  if (both) throw wrong('--overwrite and --resume were both given.', 'one of them');
  return {
    plan: {
      settings: readSettings(given, NOTHING_TOLD),
      reading: readReading(given, 'raw-format'),
      windows: rows === 'windows',
      ...(models.length > 0 ? { models } : {}),
    },
    setup: await readRawSetup(given),
    setupsPath: text(given['setups']),
    out,
    format,
    rows,
    workers: workersOf(text(given['workers'])),
    shard: shard === undefined ? undefined : parseShard(shard),
    overwrite: given['overwrite'] === true,
    resume: given['resume'] === true,
    clips,
    tracks,
    timeLimitS: secondsOf('--time-limit', given['timeLimit'], undefined),
    queue: text(given['queue']),
    passwordFile: text(given['queuePasswordFile']),
    queuePatienceS: secondsOf('--queue-patience', given['queuePatience'], QUEUE_PATIENCE_S),
  };
}

/** `--format`, else the ending of `--out`; `--csv-for excel` makes a CSV one for spreadsheets. */
function formatOf(given: Given, out: string | undefined): TableFormat {
  const ending = out === undefined ? '' : extname(out).slice(1).toLowerCase();
  const named = given['format'] ?? (ending === 'jsonl' ? 'ndjson' : ending);
  if (named === '') throw wrong('Neither --format nor --out says what to write.', 'one of them');
  const format = choice('--format (or the ending of --out)', named, FORMATS);
  if (given['csvFor'] !== 'excel') return format;
  if (format !== 'csv')
    throw wrong(`--csv-for excel was given with ${format}.`, 'it with CSV only');
  return 'excel';
}

/** All processors where nothing is said. @throws ArcError `bad-workers`. */
export function workersOf(given: string | undefined): number {
  if (given === undefined) return availableParallelism();
  const workers = /^\d{1,4}$/.test(given.trim()) ? Number(given) : Number.NaN;
  if (workers >= 1 && workers <= MOST_WORKERS) return workers;
  throw new ArcError({
    code: 'bad-workers',
    what: `--workers was given "${given}".`,
    expected: `a whole number from 1 to ${MOST_WORKERS}`,
    todo: `Leave it out for all processors (${availableParallelism()} here).`,
  });
}

function choice<T extends string>(flag: string, given: unknown, known: readonly T[]): T {
  const name = String(given).trim().toLowerCase();
  const found = known.find((one) => one === name);
  if (found) return found;
  throw wrong(
    `${flag} is "${String(given)}".${didYouMean(name, known)}`,
    `one of ${known.join(', ')}`,
  );
}

function wrong(what: string, expected: string): ArcError {
  return new ArcError({
    code: 'bad-label-options',
    what,
    expected,
    todo: 'arc-transfer label --help shows the options with examples.',
  });
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}
