import type { Command } from 'commander';
import { addWordFlags } from '../../terminal/flags/language-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags } from '../../terminal/flags/setting-flags.js';

const EXAMPLES = `Examples
  Did the new liner make the short circuits more even?
    arc-transfer compare before.csv after.csv
  A student against the instructor, as a page with both runs side by side:
    arc-transfer compare instructor.csv student.csv --reference --page student.html
  Two results written earlier:
    arc-transfer classify before.wav --json --out before.json
    arc-transfer compare before.json after.wav --json
`;

const EXIT_STATUS = `
Exit status: 0 both handled; 1 one could not be analysed; 2 wrong use.`;

/** `arc-transfer compare`: what changed between two recordings, and whether it is more than chance. */
export function registerCompare(program: Command): void {
  const command = program
    .command('compare')
    .description('say what changed between two recordings, and whether it is more than chance')
    .argument('<before>', 'a recording, or a result document')
    .argument('<after>', 'the same')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', EXIT_STATUS)
    .optionsGroup('Output:')
    .option('--json', 'the comparison as JSON')
    .option('--page <file.html>', 'also a page: the table, and both runs side by side')
    .option('--overwrite', 'replace the page of that name')
    .option('--reference', 'the first is a reference that the second is to come near to');
  addWordFlags(command);
  addReadingFlags(command);
  addSettingFlags(command);
  command.action(async (before: string, after: string, options: Record<string, unknown>) => {
    const { compareCommand } = await import('../compare/command.js');
    await compareCommand({ before, after }, options);
  });
}
