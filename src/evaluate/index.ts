export * from './compare/index.js';
export { gateCurve, heldOutFigures } from './fit/figures.js';
export { FIT_DEFAULTS, type FitOptions, type FitOutcome, fitModel } from './fit/fit-model.js';
export * from './labels/index.js';
export { bootstrap, type Interval } from './score/bootstrap.js';
export { type Confusion, confusionOf, type ScoreSummary, summarise } from './score/confusion.js';
export {
  brierScore,
  calibrationError,
  type ForecastCase,
  logLoss,
  reliability,
} from './score/proper-scores.js';
export * from './stability/index.js';
export { fitShipped, SHIPPED_VERSION } from './training/fit-shipped.js';
export { type LabelledRun, type LabelledWindow, REAL, windowsOf } from './training/labelled-run.js';
export {
  asRecorded,
  makeNonArcs,
  NON_ARC_SOUNDS,
  type RealSound,
  rerecord,
} from './training/make-non-arcs.js';
export { arcCount, emptySets, makeArc, type TrainingSets } from './training/make-runs.js';
export { poolShipped, type ShippedFit } from './training/pool-shipped.js';
export { SHIPPED_RECIPE, SMALL_RECIPE, type TrainingRecipe } from './training/recipe.js';
export { packReference, unpackReference } from './training/reference-windows.js';
