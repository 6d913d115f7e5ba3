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
