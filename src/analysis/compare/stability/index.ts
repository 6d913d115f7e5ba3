export { normalCdf, normalQuantile, twoSided } from './normal.js';
export { type Spread, spreadOf } from './spread.js';
export { type Trend, trendOf } from './trend.js';
