export {
  type DecisionSettings,
  decide,
  type JudgedIntervals,
  nameMode,
  runProbabilities,
} from './decide.js';
export { rankReasons } from './reasons.js';
export { RunEvidence } from './run-evidence.js';
export { type Shares, shareOfArcTime, steadyPart } from './shares.js';
export type { Reason, Verdict } from './verdict.js';
