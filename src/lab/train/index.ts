export { fitShipped, SHIPPED_VERSION } from './data/fit-shipped.js';
export { type LabelledRun, type LabelledWindow, REAL, windowsOf } from './data/labelled-run.js';
export {
  asRecorded,
  makeNonArcs,
  NON_ARC_SOUNDS,
  type RealSound,
  rerecord,
} from './data/make-non-arcs.js';
export { arcCount, emptySets, makeArc, type TrainingSets } from './data/make-runs.js';
export { poolShipped, type ShippedFit } from './data/pool-shipped.js';
export { SHIPPED_RECIPE, SMALL_RECIPE, type TrainingRecipe } from './data/recipe.js';
export { packReference, unpackReference } from './data/reference-windows.js';
export { arcCurve, heldOutFigures } from './fit/figures.js';
export { type FitOutcome, fitModel } from './fit/fit-model.js';
export { FIT_DEFAULTS, type FitOptions } from './fit/fit-options.js';
export {
  type ComparedFigure,
  compareModels,
  type FigureName,
  type ModelComparison,
} from './own/compare-models.js';
export { fitOwn, type OwnFit } from './own/fit-own.js';
export { checkEnough, foldsOf, LEAST_RUNS, ownRuns } from './own/own-runs.js';
