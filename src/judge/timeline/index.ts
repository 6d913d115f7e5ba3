export { type Belief, ModeFilter, type ModeFilterOptions } from './mode-filter.js';
export { SegmentBuilder } from './segments.js';
