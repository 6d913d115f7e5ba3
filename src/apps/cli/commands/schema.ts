import type { Command } from 'commander';
import { writeOut } from '../../terminal/output.js';

/** `arc-transfer schema`: the JSON Schema of the result document on stdout. */
export function registerSchema(program: Command): void {
  program
    .command('schema')
    .description('print the JSON Schema of the result document')
    .addHelpText('before', 'Examples\n    arc-transfer schema > result.schema.json\n')
    .action(async () => {
      const { resultJsonSchema } = await import('../../../analysis/result/index.js');
      await writeOut(`${JSON.stringify(resultJsonSchema(), null, 2)}\n`);
    });
}
