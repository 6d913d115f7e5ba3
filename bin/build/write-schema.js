// Writes the JSON Schema of the result document beside the built code.
import { writeFileSync } from 'node:fs';
import { resultJsonSchema } from '../../dist/analysis/result/index.js';

writeFileSync('dist/result.schema.json', `${JSON.stringify(resultJsonSchema(), null, 2)}\n`);
