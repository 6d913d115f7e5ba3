import { type Command, Option } from 'commander';
import { addModelFlag } from '../../terminal/flags/model-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags, NOTHING_TOLD } from '../../terminal/flags/setting-flags.js';
import { addSetupFlags } from '../../terminal/flags/setup-flags.js';

const EXAMPLES = `Examples
  A folder as one table, on all processors; run it again with --resume after new recordings came:
    arc-transfer label recordings/ --out runs.csv
  With the set-up of each run (columns file, wire_mm, gas, volts_v, feed_m_min, and any of your own):
    arc-transfer label "runs/**/*.wav" --setups runs.csv --out table.parquet
  What is in doubt as clips, with a list for a person to fill in:
    arc-transfer label recordings/ --out runs.csv --clips to-hear/
  One of eight parts, in a Slurm array:
    arc-transfer label recordings/ --shard $SLURM_ARRAY_TASK_ID/8 --out part-$SLURM_ARRAY_TASK_ID.ndjson
  Paths in, rows out, inside a pipe:
    find /data -name '*.wav' | arc-transfer label - --format ndjson
`;

const NOTES = `
Beside the table lies its journal (table.csv.journal). It takes every answer as soon as it is there: after
any interruption run the same again. Changed recordings and settings are labelled again, others not.
Inputs: files, folders, patterns in quotes, or - for a list on stdin, one path (or JSON object with "file"
and set-up keys) a line.
Exit status: 0 all inputs handled; 1 some failed, or stopped before the end; 2 wrong use.
The labels are estimates from recordings, not an inspection.`;

/** `arc-transfer label`: many recordings into one table. */
export function registerLabel(program: Command): void {
  const command = program
    .command('label')
    .description('label many recordings into one table, on all processors or several machines')
    .argument('<inputs...>', 'files, folders, patterns, or - for a list on stdin')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .optionsGroup('Output:')
    .option('--out <file>', 'the table; without it rows go to stdout and nothing can be resumed')
    .option('--format <name>', 'csv, tsv, ndjson or parquet (default: by the ending of --out)')
    .option('--rows <kind>', 'one row for each of: runs, segments, windows', 'runs')
    .addOption(
      new Option('--csv-for <program>', 'a CSV table for one program').choices(['any', 'excel']),
    )
    .option('--resume', 'bring a table up to date: label only what is new or changed')
    .option('--overwrite', 'label everything again and replace the table')
    .option('--clips <folder>', 'cut what is in doubt into WAV files, with labels.csv to fill in')
    .option('--tracks <folder>', 'a label track (start, end, label) for each recording')
    .optionsGroup('Work:')
    .option('--workers <n>', 'recordings labelled at the same time (default: all processors)')
    .option('--time-limit <s>', 'give one file up after so long (default: by its size)')
    .option('--setups <file>', 'CSV with a row for each recording: file, wire, gas, volts, feed, …')
    .option('--shard <k/n>', 'only part k of n; the parts in order are the whole')
    .option('--queue <url>', 'let the workers on this Redis do it (see arc-transfer work --help)')
    .option(
      '--queue-password-file <file>',
      'its password; or set ARC_TRANSFER_QUEUE_PASSWORD. Never in the URL',
    )
    .option(
      '--queue-patience <s>',
      'give up when the Redis has not answered for so long (default: 60)',
    );
  addModelFlag(command);
  addReadingFlags(command, 'raw-format');
  addSetupFlags(command);
  addSettingFlags(command, NOTHING_TOLD);
  command.action(async (inputs: string[], options: Record<string, unknown>) => {
    const { labelCommand } = await import('../../label/command.js');
    await labelCommand(inputs, options);
  });
}
