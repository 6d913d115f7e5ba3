export { type ArcChange, type ArcEvidence, EvidenceTracker } from './evidence-tracker.js';
export { TraceArcDetector } from './trace-arc-detector.js';
