export { crossCheck } from './cross-check.js';
export { EXPLANATION_RULES } from './explanations/index.js';
export { crossCheckIn } from './in-language.js';
export type { CrossCheckInput, Seen } from './input.js';
export { type Answer, type CrossCheck, crossCheckSchema } from './schema.js';
