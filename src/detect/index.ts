export {
  type ArcChange,
  type ArcEvidence,
  type ArcTracker,
  EvidenceTracker,
} from './evidence-tracker.js';
export { HeardTracker } from './heard-tracker.js';
export { TraceArcDetector } from './trace-arc-detector.js';
