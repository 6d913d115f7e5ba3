export { type CycleLists, irregularityIndex, poolRatio, spreadProductIndex } from './indices.js';
export { normalCdf, normalQuantile, twoSided } from './normal.js';
export {
  type PeakBackground,
  peakBackground,
  peakBackgroundBlocks,
  peakCounts,
  type TransferIndices,
  transferIndices,
} from './peak-background.js';
export { intervalsOf, type Spread, spreadOf } from './spread.js';
export { type Trend, trendOf } from './trend.js';
