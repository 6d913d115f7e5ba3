import { isArcError } from '../../core/index.js';
import { parseSetup } from '../../setup/index.js';
import { withStated } from '../terminal/flags/setup-flags.js';
import { STDIN } from '../terminal/inputs.js';
import { type LabelInput, labelInputs } from './inputs.js';
import type { LabelOptions } from './label-options.js';
import { OwnFiles } from './own-files.js';
import { type LabelTask, planFingerprint, type RawSetup } from './plan.js';
import { joinSetups } from './setup-join.js';
import { readSetupTable } from './setup-table.js';
import { shardOf } from './shard.js';
import { listedInputs } from './stdin-list.js';

/** The whole work of a batch, known before it begins. */
export interface TaskList {
  tasks: LabelTask[];
  /** Names of the user's own columns, and their cells for an input. */
  carried: string[];
  carriedOf(path: string): Readonly<Record<string, string>>;
  /** What was stated of an input, without what the procedure says. */
  statedOf(path: string): RawSetup;
  /** What the user should know before the work begins. */
  remarks: string[];
  /** Files met among the inputs that are outputs of this run. */
  leftOut: string[];
}

/** Lists the inputs, joins their set-ups, and takes this part of them. Of inputs named twice the first counts. */
export async function listTasks(
  given: readonly string[],
  options: LabelOptions,
  models: string,
): Promise<TaskList> {
  const own = new OwnFiles(options);
  const { inputs, twice, leftOut, stated } = await listInputs(given, own);
  const table = options.setupsPath ? await readSetupTable(options.setupsPath) : undefined;
  const joined =
    table &&
    joinSetups(
      table,
      inputs.map((one) => one.path),
    );
  const remarks: string[] = [];
  if (twice > 0) remarks.push(`${twice} inputs were named more than once; each is labelled once.`);
  if (table && joined && joined.unused.length > 0)
    remarks.push(
      `${joined.unused.length} rows of ${table.path} belong to no input (line ${joined.unused[0]?.line} first).`,
    );
  if (table && joined && joined.without.length > 0)
    remarks.push(
      `${joined.without.length} inputs have no row in ${table.path} (${joined.without[0]} first).`,
    );
  const taskOf = taskMaker(options, models);
  const tasks = inputs.map((input) =>
    taskOf(input, joined?.rowOf(input.path)?.setup ?? {}, stated.get(input.path) ?? {}),
  );
  return {
    tasks: options.shard ? shardOf(tasks, options.shard) : tasks,
    carried: table?.own ?? [],
    carriedOf: (path) => joined?.rowOf(path)?.own ?? {},
    statedOf: (path) =>
      [joined?.rowOf(path)?.setup ?? {}, stated.get(path) ?? {}].reduce(withStated, options.stated),
    remarks,
    leftOut,
  };
}

interface Listed {
  inputs: LabelInput[];
  twice: number;
  leftOut: string[];
  /** Set-ups stated beside the paths. */
  stated: Map<string, RawSetup>;
}

async function listInputs(given: readonly string[], own: OwnFiles): Promise<Listed> {
  const stated = new Map<string, RawSetup>();
  if (!given.includes(STDIN)) return { ...(await labelInputs(given, own)), stated };
  let twice = 0;
  for await (const { path, setup } of listedInputs(process.stdin)) {
    if (stated.has(path)) twice += 1;
    else stated.set(path, setup);
  }
  return {
    inputs: [...stated.keys()].map((path) => ({ path, origin: 'named' })),
    twice,
    leftOut: [],
    stated,
  };
}

/** Makes tasks; of two that state the same thing the more special one wins. */
export function taskMaker(
  options: LabelOptions,
  models: string,
): (input: LabelInput, ...special: RawSetup[]) => LabelTask {
  const { plan } = options;
  return (input, ...special) => {
    const setup = special.reduce(withStated, options.setup);
    checkSetup(input.path, setup);
    return { ...input, setup, fingerprint: planFingerprint(plan, setup, models) };
  };
}

/** What flags and table say together may contradict itself; that must show before hours of work. */
function checkSetup(path: string, setup: RawSetup): void {
  try {
    parseSetup(setup);
  } catch (error) {
    if (isArcError(error)) error.message = `${path}: ${error.message}`;
    throw error;
  }
}
