import type { Command } from 'commander';
import { addModelFlag } from '../../terminal/flags/model-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags } from '../../terminal/flags/setting-flags.js';

const EXAMPLES = `Examples
  A term's recordings against what the trainer heard (columns file, mode; paths seen from the table):
    arc-transfer evaluate truth.csv --out evaluation.html
  The same with two labellers and the day of each recording (columns labeller, group), for a script:
    arc-transfer evaluate truth.csv --json
  Whether a model of your own does better:
    arc-transfer evaluate truth.csv --model my-model.json
`;

const NOTES = `
Columns: file and mode (or label): short-circuit, globular, spray, pulsed-spray, mixed, no-arc, ambiguous, or
two modes as globular/spray. Optional: start_s and end_s for a part of a run, event_rate_hz, labeller, group,
offset_s (the moment of the recording at which a video starts; start_s and end_s are then times of the video,
except in rows that name a clip).
The list of label --clips can be given as it is; rows without a label are passed over.
Exit status: 0 all recordings read; 1 some could not be; 2 wrong use.`;

/** `arc-transfer evaluate`: labels of people against answers. */
export function registerEvaluate(program: Command): void {
  const command = program
    .command('evaluate')
    .description("compare people's labels of recordings with the answers")
    .argument('<truth.csv>', 'table with a row for each labelled recording or part of one')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .optionsGroup('Output:')
    .option('--json', 'the evaluation as one document')
    .option('--out <page.html>', 'also write a page')
    .option('--overwrite', 'let --out replace a file')
    .option('--workers <n>', 'recordings judged at the same time (default: all processors)');
  addModelFlag(command);
  addReadingFlags(command);
  addSettingFlags(command);
  command.action(async (table: string, options: Record<string, unknown>) => {
    const { evaluateCommand } = await import('../evaluate/command.js');
    await evaluateCommand(table, options);
  });
}
