import * as z from 'zod';
import { resultSchema } from './schema.js';
import { SCHEMA_VERSION } from './version.js';

/** The published JSON Schema (draft 2020-12) of the result document, made from the zod schema. */
export function resultJsonSchema(): Record<string, unknown> {
  const { $schema, ...rest } = z.toJSONSchema(resultSchema, { target: 'draft-2020-12' });
  return {
    $schema,
    title: `Result of arc-transfer, version ${SCHEMA_VERSION}`,
    ...rest,
  };
}
