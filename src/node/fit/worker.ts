import {
  fitShipped,
  type LabelledRun,
  makeArc,
  makeNonArcs,
  type TrainingRecipe,
  type TrainingSets,
} from '../../evaluate/index.js';

export type FitTask =
  | { recipe: TrainingRecipe; arc: number }
  | { recipe: TrainingRecipe; nonArcKind: string }
  | {
      recipe: TrainingRecipe;
      set: keyof TrainingSets;
      runs: readonly LabelledRun[];
      nonArcs: readonly LabelledRun[];
    };

/** One drawn arc, all recordings of one kind without an arc, or the model of one feature set. */
export default function work(task: FitTask): unknown {
  if ('arc' in task) return makeArc(task.recipe, task.arc);
  if ('nonArcKind' in task) return makeNonArcs(task.recipe, task.nonArcKind);
  return fitShipped(task.set, task.runs, task.nonArcs, task.recipe);
}
