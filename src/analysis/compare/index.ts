export { meanError } from './block-bootstrap.js';
export { compareResults, corrected, LEVEL, type Tracks } from './compare-results.js';
export { modeShares, shareDifference, wilson } from './mode-shares.js';
export { type PersonRun, type ProgressRow, progressRows } from './progress.js';
export { type Change, type Comparison, comparisonSchema } from './schema.js';
export { bySecond, type RateTrack, rateTrend } from './tracks.js';
