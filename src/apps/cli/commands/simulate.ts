import { type Command, Option } from 'commander';
import { MODES } from '../../../core/index.js';
import {
  ACOUSTIC_FAMILIES,
  CHAIN_FAMILIES,
  ELECTRICAL_FAMILIES,
} from '../../../lab/simulate/index.js';

const EXAMPLES = `Examples
  Spray transfer, as sound and as voltage and current, with the truth beside them:
    arc-transfer simulate demo/spray --mode spray --seed 7
  A student's dip transfer on a phone in a workshop, 10 dB above the noise, as AAC would leave it:
    arc-transfer simulate demo/dip --mode short-circuit --chain phone --snr 10 --codec aac-64
  Ten runs of whatever the family holds, traces only:
    arc-transfer simulate demo/any --count 10 --no-sound
  20,000 arcs and 5,000 sounds without an arc to learn from, on all processors; again after a stop it goes on:
    arc-transfer simulate --data-set drawn --arcs 20000 --others 5000 --seed 1
  The same in small, sound alone, two sounds an arc, 2 to 4 s long:
    arc-transfer simulate --data-set drawn --arcs 64 --sounds 2 --seconds 4 --traces none
`;

const NOTES = `
Written beside each other: <name>.wav (sound), <name>.csv or <name>-traces.wav (voltage, current) and
<name>.truth.json: each short, each drop, and the mode by what crossed the gap. With --mode, draws are
repeated until the metal crossed that way without doubt; without it one run in five is set wrong on purpose,
and the truth says how. The paths written go to stdout.
Simulated and invented: not evidence about real arcs.

With --data-set: shards of up to 32 as NumPy arrays with their truth as JSON lines: dry sound at 16 kHz, the sound of
each kind of event by itself, traces; data-set.json and recipe.json beside them say what was asked for and how a
recording spoils a sound. Modes and families come in turn. The same seed gives the same files for any
number of workers; a shard whose folder is there is whole and is not drawn again.`;

/** `arc-transfer simulate`: invented recordings with known truth. */
export function registerSimulate(program: Command): void {
  program
    .command('simulate')
    .description('make simulated recordings whose truth is known')
    .argument('[name]', 'where to write: folder and first part of the file names')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .optionsGroup('What happens:')
    .addOption(new Option('--mode <mode>', 'how the metal is to cross').choices(MODES))
    .option('--seed <n>', 'same seed, same files', '1')
    .option('--count <n>', 'runs, numbered 1 to n', '1')
    .option(
      '--seconds <s>',
      'time from trigger to release, 0.5 to 120 (default: 5; with --data-set 2 to 4: half of it to all)',
    )
    .addOption(
      new Option('--family <name>', 'assumptions about the arc').choices(ELECTRICAL_FAMILIES),
    )
    .option('--no-truth', 'write no truth')
    .option('--overwrite', 'replace files of these names')
    .option('--preset <name>', 'published-dip: the one published dip-transfer run')
    .optionsGroup('Sound:')
    .option('--no-sound', 'write no sound')
    .addOption(
      new Option(
        '--acoustics <name>',
        'assumptions about its sound (default: one of the first three)',
      ).choices(ACOUSTIC_FAMILIES),
    )
    .addOption(
      new Option('--chain <name>', 'what the sound goes through')
        .choices(CHAIN_FAMILIES)
        .default('studio'),
    )
    .option('--snr <dB>', 'arc over noise in 1.5 to 12 kHz while it burns (default: drawn)')
    .option('--codec <name>', 'lossy round trip, e.g. aac-64, mp3-128, opus-24 (needs ffmpeg)')
    .optionsGroup('Traces:')
    .addOption(
      new Option('--traces <kind>', 'voltage and current as')
        .choices(['csv', 'wav', 'none'])
        .default('csv'),
    )
    .option('--rate <Hz>', 'samples per second of the traces, 1000 to 100000 (default: drawn)')
    .optionsGroup('Data sets:')
    .addOption(
      new Option('--data-set <folder>', 'write shards to learn from, in place of recordings'),
    )
    .option('--arcs <n>', 'how many arcs')
    .option('--others <n>', 'how many sounds without an arc')
    .option('--sounds <n>', 'sounds drawn for each arc', '1')
    .option('--workers <n>', 'threads (default: all processors)')
    .action(async (name: string | undefined, options: Record<string, unknown>) => {
      const folder = options['dataSet'] as string | undefined;
      if (folder !== undefined) {
        const { dataSetCommand } = await import('../simulate/data-set/command.js');
        await dataSetCommand(folder, options);
        return;
      }
      const { simulateCommand } = await import('../simulate/command.js');
      await simulateCommand(name, options);
    });
}
