import type { Command } from 'commander';
import { addModelFlag } from '../../terminal/flags/model-flag.js';

const EXAMPLES = `Examples
  On every host that sees the recordings under the same paths:
    arc-transfer work --queue redis://queue.example:6379 --queue-password-file ~/.queue-password
  On the host that wants the table:
    arc-transfer label /data/recordings --queue redis://queue.example:6379 --out table.parquet
  A Slurm job that ends when the work does:
    arc-transfer work --queue redis://queue.example:6379 --stop-when-idle 60
`;

const NOTES = `
A worker takes one input for each thread, gives it back if it is stopped, and loses nothing if it is
killed. It serves its own version and models only: hosts that would answer differently share no work.
Whoever can write to the Redis can have workers read any file that they may read: keep it closed.`;

/** `arc-transfer work`: labels what others put in a queue. */
export function registerWork(program: Command): void {
  const command = program
    .command('work')
    .description('label recordings that "label --queue" put in a queue on Redis')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .requiredOption(
      '--queue <url>',
      'redis://host:port/db, rediss:// with TLS, user@ before the host',
    )
    .option(
      '--queue-password-file <file>',
      'its password; or set ARC_TRANSFER_QUEUE_PASSWORD. Never in the URL',
    )
    .option(
      '--queue-patience <s>',
      'give up when the Redis has not answered for so long (default: 60)',
    )
    .option('--workers <n>', 'recordings labelled at the same time (default: all processors)')
    .option('--root <folder>', 'where relative paths of inputs begin on this host')
    .option('--stop-when-idle <s>', 'end after so many seconds without work (default: never)')
    .option(
      '--stalled-after <s>',
      'time after which a killed worker’s input is given to another',
      '30',
    );
  addModelFlag(command);
  command.action(async (options: Record<string, unknown>) => {
    const { workCommand } = await import('../../label/queue/work.js');
    await workCommand(options);
  });
}
