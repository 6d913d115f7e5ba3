export { CAUTIONS } from './cautions.js';
export { type FailedInput, failedResult } from './failed.js';
export { resultJsonSchema } from './json-schema.js';
export { type Result, resultSchema, SCHEMA_VERSION } from './schema.js';
