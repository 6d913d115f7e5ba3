import { type Command, Option } from 'commander';
import { addReaderFlags } from '../../terminal/flags/language-flag.js';
import { addModelFlag } from '../../terminal/flags/model-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags } from '../../terminal/flags/setting-flags.js';
import { addSetupFlags } from '../../terminal/flags/setup-flags.js';
import { addRecordFlags } from '../../terminal/records/record-flags.js';

const EXAMPLES = `Examples
  A phone recording, against the dial:
    arc-transfer classify weld.wav --set-voltage 18.5 --wire-diameter 0.9mm --gas "Ar+18CO2"
  Two channels of a data logger stored as WAV, 100 V and 1000 A at digital full scale:
    arc-transfer classify daq.wav --channel voltage=1,current=2 --scale voltage=100,current=1000
  A voltage log without a time column; exit status 1 unless it is clearly spray:
    arc-transfer classify seam.csv --sample-rate 20kHz --expect spray --fail-on disagrees,unsure,no-arc
  The sound and the voltage log of one run, together:
    arc-transfer classify run.wav --with-trace run.csv
  A folder as one table:
    arc-transfer classify recordings/ --csv --out recordings.csv
  A folder against the welding procedure, a record of each weld to read and sign:
    arc-transfer classify day/ --procedure wps.json --trace-volts-at feeder --records records/ --id-pattern "{part}_{seam}"
`;

const EXIT_STATUS = `
Exit status: 0 all inputs handled; 1 some failed, or what --fail-on names was met; 2 wrong use.
The answer is an estimate from a recording, not an inspection.`;

/** `arc-transfer classify`: recordings in, verdicts out. */
export function registerClassify(program: Command): void {
  const command = program
    .command('classify')
    .description('say how the metal crossed, for each recording given')
    .argument('<inputs...>', 'files, folders (every recording in them), or - for stdin')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', EXIT_STATUS)
    .optionsGroup('Output:')
    .addOption(
      new Option(
        '--json',
        'the result document, one a line (indented for one input in a terminal)',
      ).conflicts(['csv', 'csvFor']),
    )
    .addOption(new Option('--csv', 'a table, one row a run (RFC 4180)').implies({ csvFor: 'any' }))
    .addOption(
      new Option('--csv-for <program>', 'a table for one program').choices(['any', 'excel']),
    )
    .option('--out <file>', 'write there instead of stdout')
    .option('--report <file.html>', 'also make a page to look at, as the report command does')
    .option('--overwrite', 'let --out and --report replace files')
    .option('--explain', 'every reason, the settings in force and the steps taken')
    .option(
      '--fail-on <list>',
      'exit status 1 on disagrees (settings-disagree, wanted-disagrees: one of the two), cannot-tell, unsure, no-arc, mixed or a mode, with commas between',
    );
  addModelFlag(command);
  command
    .optionsGroup('Sound and trace of one run:')
    .addOption(
      new Option(
        '--with-trace <file>',
        'voltage/current log of the same run: both are aligned and judged together, if they are of one run; what is stated about reading then holds for the log',
      ).conflicts(['report']),
    )
    .option(
      '--shared-clock',
      'one clock ran both recorders from the same moment: the delay is also told as a distance',
    );
  addReadingFlags(command);
  addReaderFlags(command.optionsGroup('Words and units of the text:'));
  addSetupFlags(command);
  addRecordFlags(command);
  addSettingFlags(command);
  command.action(async (inputs: string[], options: Record<string, unknown>) => {
    const { classifyCommand } = await import('../classify/command.js');
    await classifyCommand(inputs, options);
  });
}
