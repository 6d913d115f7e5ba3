export {
  type ArcSigns,
  arcSignVector,
  arcSignVectorLength,
  isSilent,
  ruleScore,
  windowArcScore,
} from './arc-classifier.js';
export {
  type Calibration,
  calibrate,
  calibrateBinary,
  priorScore,
  softmax,
} from './calibration.js';
export type {
  Classifier,
  RunOpinion,
  RunSums,
  WindowJudgement,
} from './classifier.js';
export { classifierFor } from './classifier-for.js';
export {
  type Ear,
  type EarModel,
  type EarOutput,
  earOf,
  type SlopeAndOffsets,
} from './ear/ear-document.js';
export { LEAP_LENIENCE } from './fitted-classifier.js';
export { type LinearScorer, standardise } from './linear-scorer.js';
export { checkFit, type FittedModel, MODEL_SCHEMA_VERSION, type Model } from './model-document.js';
export { modelFingerprint } from './model-fingerprint.js';
export { HeardSums, StreamingNetwork } from './network/index.js';
export { type Novelty, noveltyDistance } from './novelty.js';
export { centred, runScores } from './run-scores.js';
export { RunVector, runVectorLength } from './run-vector.js';
export { explain, type Scorer, score } from './scorer.js';
export type { Tree, TreeScorer } from './tree-scorer.js';
export { WindowOpinions } from './window-opinions.js';
