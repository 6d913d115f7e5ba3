import {
  fitShipped,
  type LabelledRun,
  makeArc,
  makeNonArcs,
  type TrainingRecipe,
  type TrainingSets,
} from '../../../lab/train/index.js';
import type { ReadOptions } from '../../../recording/index.js';
import { readWindows } from './read-windows.js';

export type FitTask =
  | { recording: string; reading: ReadOptions }
  | { recipe: TrainingRecipe; arc: number }
  | { recipe: TrainingRecipe; nonArcKind: string }
  | {
      recipe: TrainingRecipe;
      set: keyof TrainingSets;
      runs: readonly LabelledRun[];
      nonArcs: readonly LabelledRun[];
    };

/** The windows of a recording, one drawn arc, all recordings of one kind without an arc, or the model of one feature set. */
export default function work(task: FitTask): unknown {
  if ('recording' in task) return readWindows(task.recording, task.reading);
  if ('arc' in task) return makeArc(task.recipe, task.arc);
  if ('nonArcKind' in task) return makeNonArcs(task.recipe, task.nonArcKind);
  return fitShipped(task.set, task.runs, task.nonArcs, task.recipe);
}
