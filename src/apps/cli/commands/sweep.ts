import type { Command } from 'commander';
import { addReaderFlags } from '../../terminal/flags/language-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags } from '../../terminal/flags/setting-flags.js';
import { addSetupFlags } from '../../terminal/flags/setup-flags.js';

const EXAMPLES = `Examples
  One log while dial and feed were turned; the tool finds the steps:
    arc-transfer sweep evening.csv --wire 1.2mm --gas 82/18 --page map.html
  A weld for each setting, with a table that says which (file, set_voltage_v, wire_feed_m_per_min):
    arc-transfer sweep welds/*.csv --steps settings.csv --wire 1.2mm --gas 82/18 --machine-name "Bay 4" --machine-file bay4.json
  Then ask this machine before the tables:
    arc-transfer expect --machine bay4.json --wire 1.2mm --gas 82/18 --feeder-volts 27 --measured-current 260
`;

const EXIT_STATUS = `
Exit status: 0 every step judged; 2 wrong use, or a recording that cannot be read.`;

/** `arc-transfer sweep`: the map of one machine, wire and gas from welds at many settings. */
export function registerSweep(program: Command): void {
  const command = program
    .command('sweep')
    .description('draw the map of your machine from welds or a log at stepped settings')
    .argument('<recordings...>', 'recordings, or one log of all steps')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', EXIT_STATUS)
    .optionsGroup('Output:')
    .option('--page <file.html>', 'the measured map beside the published one, with a table')
    .option('--picture <file.svg>', 'the measured map alone')
    .option('--machine-file <file.json>', 'what expect --machine reads')
    .option(
      '--machine-name <name>',
      'how the machine is called there (default: the name of the first recording)',
    )
    .option('--json', 'what the machine file holds, to stdout')
    .option('--overwrite', 'replace files of these names')
    .optionsGroup('Steps:')
    .option(
      '--steps <table.csv>',
      'file, from_s, to_s and set-up columns; without it they are found',
    );
  addReaderFlags(command);
  addSetupFlags(command);
  addReadingFlags(command);
  addSettingFlags(command);
  command.action(async (paths: string[], options: Record<string, unknown>) => {
    const { sweepCommand } = await import('../sweep/command.js');
    await sweepCommand(paths, options);
  });
}
