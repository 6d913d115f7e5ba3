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
export { Classifier, type WindowJudgement } from './classifier.js';
export { type LinearScorer, standardise } from './linear-scorer.js';
export { checkFit, MODEL_SCHEMA_VERSION, type Model } from './model-document.js';
export { modelFingerprint } from './model-fingerprint.js';
export { type Novelty, noveltyDistance } from './novelty.js';
export { centred, runScores } from './run-scores.js';
export { RunVector, runVectorLength } from './run-vector.js';
export { explain, type Scorer, score } from './scorer.js';
export type { Tree, TreeScorer } from './tree-scorer.js';
export { WindowOpinions } from './window-opinions.js';
