// Writes the JSON Schemas of the documents beside the built code.
import { writeFileSync } from 'node:fs';
import { resultJsonSchema } from '../../dist/analysis/result/index.js';
import { procedureJsonSchema } from '../../dist/procedure/index.js';
import { recordJsonSchema } from '../../dist/record/index.js';

const SCHEMAS = {
  result: resultJsonSchema(),
  procedure: procedureJsonSchema(),
  record: recordJsonSchema(),
};
for (const [name, schema] of Object.entries(SCHEMAS))
  writeFileSync(`dist/${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);
