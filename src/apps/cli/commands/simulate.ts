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
`;

const NOTES = `
Written beside each other: <name>.wav (sound), <name>.csv or <name>-traces.wav (voltage, current) and
<name>.truth.json: each short, each drop, and the mode by what crossed the gap. With --mode, draws are
repeated until the metal crossed that way without doubt. The paths written go to stdout.
Simulated and invented: not evidence about real arcs.`;

/** `arc-transfer simulate`: invented recordings with known truth. */
export function registerSimulate(program: Command): void {
  program
    .command('simulate')
    .description('make simulated recordings whose truth is known')
    .argument('<name>', 'where to write: folder and first part of the file names')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .optionsGroup('What happens:')
    .addOption(new Option('--mode <mode>', 'how the metal is to cross').choices(MODES))
    .option('--seed <n>', 'same seed, same files', '1')
    .option('--count <n>', 'runs, numbered 1 to n', '1')
    .option('--seconds <s>', 'time from trigger to release, 0.5 to 120', '5')
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
    .action(async (name: string, options: Record<string, unknown>) => {
      const { simulateCommand } = await import('../simulate/command.js');
      await simulateCommand(name, options);
    });
}
