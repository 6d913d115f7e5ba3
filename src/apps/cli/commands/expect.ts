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
  What my own machine gave near these settings, measured with sweep:
    arc-transfer expect --machine bay4.json --wire 1.2mm --gas 82/18 --feeder-volts 27 --measured-current 265
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
    .option('--json', 'the answer as JSON')
    .option(
      '--machine <file.json>',
      'what sweep measured on your machine; it goes before the tables',
    );
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
    const { askMachine, machineLines } = await import('../expect/machine.js');
    const file = options['machine'];
    const machine = typeof file === 'string' ? await askMachine(file, setup) : null;
    if (options['json'] === true) {
      const measured = machine === null ? {} : { machine };
      await writeOut(jsonForStdout({ setup, ...measured, ...expectation }));
      return;
    }
    const { expectationText } = await import('../expect/text.js');
    const { lookOf } = await import('../../terminal/look.js');
    const look = lookOf(process.stdout);
    const first = machine === null ? [] : machineLines(machine, setup, look, words);
    const text = expectationText(expectation, setup, look, words, material);
    await writeOut(first.length === 0 ? text : `${first.join('\n')}\n${text}`);
  });
}
