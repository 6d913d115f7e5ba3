import type { Command } from 'commander';
import { addWordFlags } from '../../terminal/flags/language-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';

const EXAMPLES = `Examples
  What does this log hold, and how would it be read?
    arc-transfer inspect trace.csv
  The same with the columns stated:
    arc-transfer inspect daq.mat --map "voltage=Ch1,current=Ch2" --sample-rate 20kHz
  For a script:
    arc-transfer inspect recordings/*.wav --json
`;

/** `arc-transfer inspect`: what files hold, before any of them is classified. */
export function registerInspect(program: Command): void {
  const command = program
    .command('inspect')
    .description('say what a file holds: series, units, rates, a sketch, and how to read it')
    .argument('<files...>', 'recordings or logs')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', '\nExit status: 0 all can be read as given; 1 some cannot; 2 wrong use.')
    .optionsGroup('Output:')
    .option('--json', 'one JSON document a file, one a line');
  addWordFlags(command);
  addReadingFlags(command);
  command.action(async (files: string[], options: Record<string, unknown>) => {
    const { inspectCommand } = await import('../inspect/command.js');
    await inspectCommand(files, options);
  });
}
