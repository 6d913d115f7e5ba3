import type { Command } from 'commander';
import { addReaderFlags, readWords } from '../../terminal/flags/language-flag.js';
import { addSetupFlags, readRawSetup } from '../../terminal/flags/setup-flags.js';
import { jsonForStdout, writeOut } from '../../terminal/output.js';

const EXAMPLES = `Examples
  Which modes do these settings permit?
    arc-transfer expect --wire 1.2mm --gas M21 --set-voltage 24 --wire-feed 8m/min
  With the voltage measured at the feeder, which says much more:
    arc-transfer expect --wire 1.2mm --gas Ar+8CO2 --feeder-volts 28 --wire-feed 9m/min
  I want spray: where do I set it, in inches?
    arc-transfer expect --expect spray --wire 0.045in --gas 90/10 --units inch
  Heat input and metal deposited as well:
    arc-transfer expect --wire 0.045in --gas 90/10 --feeder-volts 28 --measured-current 270 --wire-feed 400ipm --travel-speed 12in/min
`;

/** `arc-transfer expect`: what a set-up permits, without any recording. */
export function registerExpect(program: Command): void {
  const command = program
    .command('expect')
    .description('say which modes a set-up permits, and on whose authority')
    .addHelpText('before', EXAMPLES)
    .optionsGroup('Output:')
    .option('--json', 'the answer as JSON');
  addReaderFlags(command);
  addSetupFlags(command);
  command.action(async (options: Record<string, unknown>) => {
    const { expectModes, parseSetup, processMaps } = await import('../../../setup/index.js');
    const words = readWords(options);
    const { wireMaterial, ...rest } = options;
    const word = typeof wireMaterial === 'string' ? wireMaterial : '';
    const material = processMaps.mapOnlyMaterial(word);
    const setup = parseSetup(await readRawSetup(material === null ? options : rest));
    const expectation = expectModes(setup, material);
    if (options['json'] === true) {
      await writeOut(jsonForStdout({ setup, ...expectation }));
      return;
    }
    const { expectationText } = await import('../expect/text.js');
    const { lookOf } = await import('../../terminal/look.js');
    await writeOut(expectationText(expectation, setup, lookOf(process.stdout), words, material));
  });
}
