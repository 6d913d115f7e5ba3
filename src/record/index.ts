export { makeRecord, type RecordInput } from './make.js';
export {
  type LimitRow,
  RECORD_FORMAT,
  recordJsonSchema,
  recordSchema,
  type WeldRecord,
} from './schema.js';
