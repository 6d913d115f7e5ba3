export { ElectricalGate } from './electrical.js';
export { type ArcChange, type ArcEvidence, EvidenceTracker } from './evidence-tracker.js';
