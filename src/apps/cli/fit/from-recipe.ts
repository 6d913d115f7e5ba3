import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ArcError } from '../../../core/index.js';
import { SOUND_FEATURES } from '../../../features/index.js';
import { packageFile } from '../../../files/package-file.js';
import {
  poolShipped,
  SHIPPED_RECIPE,
  type ShippedFit,
  SMALL_RECIPE,
  type TrainingSets,
  unpackReference,
} from '../../../lab/train/index.js';
import { workersOf } from '../../label/label-options.js';
import { makeFolder, writeFileBy } from '../../terminal/sink.js';
import { drawRuns } from './draw-runs.js';
import { type FitFlags, needed } from './flags.js';
import { openPool } from './pool.js';
import type { FitTask } from './worker.js';

const SETS: readonly (keyof TrainingSets)[] = ['sound', 'voltage', 'voltage-current', 'current'];

/** Draws the runs of a recipe, fits a model a feature set, weighs sound against trace, and writes the documents. */
export async function fitFromRecipe(flags: FitFlags): Promise<void> {
  const folder = needed(flags, 'out', '--out');
  const recipe = flags['recipe'] === 'small' ? SMALL_RECIPE : SHIPPED_RECIPE;
  const workers = workersOf(flags['workers'] as string | undefined);
  const sets = chosenSets(flags['set']);
  // Before the long work, so that a folder that refuses is known at once.
  await makeFolder(folder);
  const real = unpackReference(await readReference(), SOUND_FEATURES);
  const drawn = await drawRuns(recipe, workers, sayProgress);
  const write = async (name: string, document: unknown): Promise<void> => {
    const path = join(folder, `${name}.json`);
    const rules = { overwrite: true, inputs: [fileURLToPath(packageFile(REFERENCE))] };
    await writeFileBy(path, `${JSON.stringify(document)}\n`, rules);
    process.stdout.write(`${path}\n`);
  };
  const pool = openPool(workers);
  const fit = async (set: keyof TrainingSets): Promise<[string, ShippedFit]> => {
    const runs = drawn.sets[set];
    process.stderr.write(`fitting ${set} on ${runs.length} runs\n`);
    const nonArcs = set === 'sound' ? [...drawn.nonArcs, ...real] : [];
    const task: FitTask = { recipe, set, runs, nonArcs };
    const fitted = (await pool.run(task)) as ShippedFit;
    await write(set, fitted.model);
    return [set, fitted];
  };
  let fits: Partial<Record<keyof TrainingSets, ShippedFit>>;
  try {
    fits = Object.fromEntries(await Promise.all(sets.map(fit)));
  } finally {
    await pool.destroy();
  }
  if (isWhole(fits)) await write('pooling', poolShipped(fits, recipe));
  else process.stderr.write('Sound is weighed against trace only where all four are fitted.\n');
}

function isWhole(
  fits: Partial<Record<keyof TrainingSets, ShippedFit>>,
): fits is Record<keyof TrainingSets, ShippedFit> {
  return SETS.every((set) => fits[set]);
}

function chosenSets(names: string | boolean | undefined): (keyof TrainingSets)[] {
  if (typeof names !== 'string') return [...SETS];
  return names.split(',').map((name) => {
    const set = SETS.find((one) => one === name.trim());
    if (set) return set;
    throw new ArcError({
      code: 'unknown-feature-set',
      what: `There is no feature set "${name}".`,
      expected: SETS.join(', '),
      todo: 'Correct --set.',
    });
  });
}

function sayProgress(done: number, total: number): void {
  const step = Math.ceil(total / 50);
  if (done % step === 0 || done === total) process.stderr.write(`${done} of ${total} simulated\n`);
}

const REFERENCE = 'fixtures/training/sounds-without-arc.json';

/** Windows of real sounds without an arc: they stand in a clone and are left out of the package. */
async function readReference(): Promise<unknown> {
  const text = await readFile(packageFile(REFERENCE), 'utf8').catch((cause: unknown) => {
    throw new ArcError({
      code: 'needs-clone',
      what: `"${REFERENCE}" is not part of the installed package.`,
      expected: 'a clone of the repository, which holds it',
      todo: 'Run fit --recipe in a clone, or fit --from your own labelled recordings.',
      cause,
    });
  });
  return JSON.parse(text);
}
