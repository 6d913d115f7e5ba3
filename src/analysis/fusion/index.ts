export { type Alignment, align, MOST_LAG_S } from './align.js';
export { SoundSeries, TraceSeries } from './event-series.js';
export { type Pooling, type PoolWeights, parsePooling, pool } from './pooling.js';
