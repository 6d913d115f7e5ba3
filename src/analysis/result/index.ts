export { arcTimeOf } from './arc-time.js';
export { CAUTION_MESSAGES, CAUTIONS } from './cautions.js';
export { type FailedInput, failedResult } from './failed.js';
export { resultJsonSchema } from './json-schema.js';
export { type Result, resultSchema } from './schema.js';
export { READABLE_VERSIONS, SCHEMA_VERSION } from './version.js';
