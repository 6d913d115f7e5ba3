export {
  type DecisionSettings,
  decide,
  isUnlike,
  type JudgedIntervals,
  nameMode,
  runProbabilities,
} from './decide.js';
export { rankReasons } from './reasons.js';
export { RunEvidence } from './run-evidence.js';
export { type Shares, shareOfArcTime, steadyPart } from './shares.js';
export {
  MEASURED_SIGNS,
  type MeasuredSign,
  type PlainRefusal,
  plainRefusal,
  type UsualSigns,
} from './signs/index.js';
export { because, type Judged, type Reason, type Verdict } from './verdict.js';
