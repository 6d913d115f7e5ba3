export { contradictions, fillSetup, type Otherwise, within } from './fill.js';
export { readProcedure } from './read.js';
export {
  PROCEDURE_FORMAT,
  type ProcedureDocument,
  procedureJsonSchema,
  procedureSchema,
} from './schema.js';
export type { Limit, Procedure } from './types.js';
