export { type ArcCondition, arcCondition, type ConditionInput } from './condition.js';
export type { Finding, Rating } from './finding.js';
