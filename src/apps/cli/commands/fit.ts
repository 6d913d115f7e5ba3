import { type Command, Option } from 'commander';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';

const EXAMPLES = `Examples
  A model on your own labelled recordings (columns file, mode, and group: day, machine or person):
    arc-transfer fit --from labels.csv --out my-model.json
    arc-transfer classify new.wav --model my-model.json
  The shipped models again, with the weights of sound against trace (an hour and a half on two cores):
    arc-transfer fit --recipe shipped --out models/
`;

const NOTES = `
With --from, every group is scored by a model that has not seen it (without groups: five parts, each recording
in one), and the new model is compared with the shipped one on those scores. It takes two modes or
more, each with 20 recordings in two groups or more; labels as for evaluate.
Exit status: 0 done; 1 some recordings could not be read; 2 wrong use or too little to learn from.`;

/** `arc-transfer fit`: a model from labelled recordings, or the shipped models from their recipe. */
export function registerFit(program: Command): void {
  const command = program
    .command('fit')
    .description('fit a model on your own labelled recordings, or make the shipped models again')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .addOption(
      new Option('--from <labels.csv>', 'labelled recordings to learn from').conflicts([
        'recipe',
        'referenceFrom',
      ]),
    )
    .addOption(new Option('--recipe <name>', 'draw simulated runs').choices(['shipped', 'small']))
    .option('--out <path>', 'where to write: a file for --from, a folder for --recipe')
    .option('--overwrite', 'with --from: let --out replace a file')
    .option(
      '--set <names>',
      'with --recipe: only these, with commas between; with --from: this one',
    )
    .option('--workers <n>', 'threads that read, simulate and fit (default: all processors)')
    .addOption(
      new Option(
        '--reference-from <folder>',
        'write the windows of real recordings without an arc to --out',
      ).conflicts(['recipe', 'workers']),
    );
  addReadingFlags(command);
  command.action(async (options: Record<string, string | undefined>) => {
    const { fitCommand } = await import('../fit/command.js');
    await fitCommand(options);
  });
}
