import type { Command } from 'commander';

const EXAMPLES = `Examples
  The browser page as files for any web host:
    arc-transfer page --out page/
`;

/** `arc-transfer page`: the browser page as a static site. */
export function registerPage(program: Command): void {
  program
    .command('page')
    .description('write the browser page as a static site')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', '\nExit status: 0 written; 2 wrong use.')
    .requiredOption('--out <folder>', 'folder to write to')
    .option('--overwrite', 'write into a folder that is not empty')
    .action(async (options: Record<string, unknown>) => {
      const { pageCommand } = await import('../serve/page-command.js');
      await pageCommand(options);
    });
}
