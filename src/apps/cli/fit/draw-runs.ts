import {
  arcCount,
  emptySets,
  type LabelledRun,
  NON_ARC_SOUNDS,
  type TrainingRecipe,
  type TrainingSets,
} from '../../../lab/train/index.js';
import { openPool } from './pool.js';
import type { FitTask } from './worker.js';

/** The runs of a recipe, drawn by several threads and put in the order of their numbers. */
export async function drawRuns(
  recipe: TrainingRecipe,
  workers: number,
  progress: (done: number, total: number) => void,
): Promise<{ sets: TrainingSets; nonArcs: LabelledRun[] }> {
  const pool = openPool(workers);
  const total = arcCount(recipe) + NON_ARC_SOUNDS.length;
  let done = 0;
  const run = async <T>(task: FitTask): Promise<T> => {
    const result = (await pool.run(task)) as T;
    progress(++done, total);
    return result;
  };
  try {
    const arcs = await Promise.all(
      Array.from({ length: arcCount(recipe) }, (_, arc) => run<TrainingSets>({ recipe, arc })),
    );
    const nonArcs = await Promise.all(
      NON_ARC_SOUNDS.map((nonArcKind) => run<LabelledRun[]>({ recipe, nonArcKind })),
    );
    const sets = emptySets();
    for (const arc of arcs)
      for (const set of Object.keys(sets) as (keyof TrainingSets)[]) sets[set].push(...arc[set]);
    return { sets, nonArcs: nonArcs.flat() };
  } finally {
    await pool.destroy();
  }
}
