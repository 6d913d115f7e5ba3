export { didYouMean } from './did-you-mean.js';
export { ArcError, isArcError } from './error.js';
export { canonicalJson, fingerprint } from './fingerprint.js';
export { createRandom, type Random } from './random.js';
export { totalS } from './spans.js';
export { capital } from './text.js';
export * from './units.js';
export { TOOL_NAME, TOOL_VERSION } from './version.js';
export * from './vocabulary.js';
