import type { Command } from 'commander';

/** What the general help says of each command: name, arguments, whether it has options, and what it does. */
const OVERVIEW: readonly [name: string, args: string, options: boolean, does: string][] = [
  ['classify', '<inputs...>', true, 'say how the metal crossed, for each recording given'],
  [
    'compare',
    '<before> <after>',
    true,
    'say what changed between two recordings, and whether it is more than chance',
  ],
  ['evaluate', '<truth.csv>', true, "compare people's labels of recordings with the answers"],
  ['expect', '', true, 'say which modes a set-up permits, and on whose authority'],
  [
    'inspect',
    '<files...>',
    true,
    'say what a file holds: series, units, rates, a sketch, and how to read it',
  ],
  [
    'label',
    '<inputs...>',
    true,
    'label many recordings into one table, on all processors or several machines',
  ],
  [
    'fit',
    '',
    true,
    'fit a model on your own labelled recordings, or make the shipped models again',
  ],
  ['page', '', true, 'write the browser page as a static site'],
  ['report', '<inputs...>', true, 'make a page to look at, for each recording given'],
  [
    'schema',
    '[document]',
    false,
    'print the JSON Schema of a document: result, procedure or record',
  ],
  ['serve', '', true, 'offer the browser page: record, hear the verdict, try again'],
  ['simulate', '[name]', true, 'make simulated recordings whose truth is known'],
  [
    'sweep',
    '<recordings...>',
    true,
    'draw the map of your machine from welds or a log at stepped settings',
  ],
  ['watch', '[source]', true, 'watch an arc while it burns: mode, alarm, a result for each weld'],
  ['work', '', true, 'label recordings that "label --queue" put in a queue on Redis'],
  ['help', '[name]', false, 'print a topic (formats, trust, clusters …), or the help of a command'],
];

/** Adds the commands as they stand in the general help: to load them all for that would take longer than to run one. */
export function listCommands(program: Command): void {
  for (const [name, args, options, does] of OVERVIEW) {
    const command = program.command(name).description(does);
    if (args !== '') command.arguments(args);
    if (options) command.option('--any', 'stands for the options, which are not listed here');
  }
}
