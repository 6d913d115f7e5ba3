import { type Command, Option } from 'commander';
import { addReaderFlags } from '../../terminal/flags/language-flag.js';
import { addModelFlag } from '../../terminal/flags/model-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags } from '../../terminal/flags/setting-flags.js';
import { addSetupFlags } from '../../terminal/flags/setup-flags.js';
import { addRecordFlags } from '../../terminal/records/record-flags.js';

const EXAMPLES = `Examples
  A page to show a student, against the dial of the machine:
    arc-transfer report weld.wav --out weld.html --set-voltage 18.5 --wire-diameter 0.9mm --gas "Ar+18CO2"
  Two seams side by side on equal axes (and a page for each):
    arc-transfer report before.csv after.csv --out seams.html
  Pages and, beside them, records against the welding procedure:
    arc-transfer report day/ --out day.html --procedure wps.json --trace-volts-at feeder --records records/
  A class over the weeks, held against the instructor's weld (files like anna_2026-03-02_1.csv):
    arc-transfer report class/*.csv --out class.html --progress "{name}_{day}_*.csv" --reference instructor.csv
  One figure for a paper, and the whole page for a job folder:
    arc-transfer report weld.wav --format svg --figure rhythm --out rhythm.svg
    arc-transfer report weld.wav --format pdf --out weld.pdf
`;

const MORE = `
Figures: time, map, place, reasons, levels, plane, short-voltage, short-current, rhythm, intervals.
PNG and PDF are drawn by Chromium or Chrome where there is one; pages and SVG need none.
A page holds everything, works offline and sends nothing anywhere.
Exit status: 0 all inputs handled; 1 some failed; 2 wrong use.`;

/** `arc-transfer report`: recordings in, pages to look at out. */
export function registerReport(program: Command): void {
  const command = program
    .command('report')
    .description('make a page to look at, for each recording given')
    .argument('<inputs...>', 'files, folders (every recording in them), or - for stdin')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', MORE)
    .optionsGroup('Output:')
    .requiredOption(
      '--out <file>',
      'the page; of several inputs the index, with a folder beside it',
    )
    .option('--overwrite', 'let --out replace files')
    .option(
      '--progress <pattern or table>',
      'whose runs they are and of which day, such as "{name}_{day}_*.csv": a table and chart in the index, and a CSV',
    )
    .option('--reference <file>', 'with --progress: the run that all are held against')
    .addOption(
      new Option('--format <name>', 'html, or one figure as svg, png or pdf').choices([
        'html',
        'svg',
        'png',
        'pdf',
      ]),
    )
    .option('--figure <name>', 'which figure (default time; for pdf the whole page)')
    .option('--browser <path>', 'Chromium or Chrome for png and pdf, if not on the PATH');
  addModelFlag(command);
  addReadingFlags(command, 'raw-format');
  addReaderFlags(command.optionsGroup('Words and units of the text:'));
  addSetupFlags(command);
  addRecordFlags(command);
  addSettingFlags(command);
  command.action(async (inputs: string[], options: Record<string, unknown>) => {
    const { reportCommand } = await import('../report/command.js');
    await reportCommand(inputs, options);
  });
}
