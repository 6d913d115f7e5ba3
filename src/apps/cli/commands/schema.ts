import { Argument, type Command } from 'commander';
import { writeOut } from '../../terminal/output.js';

/** `arc-transfer schema`: the JSON Schema of a document on stdout. */
export function registerSchema(program: Command): void {
  program
    .command('schema')
    .description('print the JSON Schema of a document: result, procedure or record')
    .addArgument(
      new Argument('[document]', 'which one').choices(Object.keys(SCHEMAS)).default('result'),
    )
    .addHelpText(
      'before',
      'Examples\n    arc-transfer schema > result.schema.json\n    arc-transfer schema procedure > procedure.schema.json\n',
    )
    .action(async (document: keyof typeof SCHEMAS) => {
      await writeOut(`${JSON.stringify(await SCHEMAS[document](), null, 2)}\n`);
    });
}

const SCHEMAS = {
  result: async () => (await import('../../../analysis/result/index.js')).resultJsonSchema(),
  procedure: async () => (await import('../../../procedure/index.js')).procedureJsonSchema(),
  record: async () => (await import('../../../record/index.js')).recordJsonSchema(),
};
