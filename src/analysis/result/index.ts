export { CAUTIONS } from './cautions.js';
export { type FailedInput, failedResult } from './failed.js';
export { resultJsonSchema } from './json-schema.js';
export { type Result, resultSchema } from './schema.js';
export { SCHEMA_VERSION } from './version.js';
