export type { SeriesFigures } from './figures.js';
export { inspectRecording } from './inspect.js';
export type { InspectedSeries, Inspection } from './inspection.js';
