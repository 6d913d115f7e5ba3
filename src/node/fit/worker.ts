import { makeArc, makeNonArcs, type TrainingRecipe } from '../../evaluate/index.js';

export type FitTask =
  | { recipe: TrainingRecipe; arc: number }
  | { recipe: TrainingRecipe; nonArcKind: string };

/** One drawn arc, or all recordings of one kind without an arc. */
export default function work(task: FitTask): unknown {
  if ('arc' in task) return makeArc(task.recipe, task.arc);
  return makeNonArcs(task.recipe, task.nonArcKind);
}
