export { EvidenceCollector, watched } from './collector.js';
export { MARK_S } from './mark-list.js';
export { type Placement, placeRun } from './placement.js';
export { RateTrack } from './rate-track.js';
export type * from './types.js';
