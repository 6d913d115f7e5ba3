export * from './labels/index.js';
export {
  type Cell,
  count,
  number,
  sayInterval,
  share,
  type Table,
  tablesOf,
} from './labels/tables.js';
export { bootstrap, bootstrapAll, type Interval } from './score/bootstrap.js';
export { type Confusion, confusionOf, type ScoreSummary, summarise } from './score/confusion.js';
export type { Kappa } from './score/kappa.js';
export {
  accuracyOf,
  brierScore,
  calibrationError,
  type ForecastCase,
  logLoss,
  reliability,
} from './score/proper-scores.js';
