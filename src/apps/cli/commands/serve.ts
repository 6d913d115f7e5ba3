import type { Command } from 'commander';

const EXAMPLES = `Examples
  Record with this machine's own microphone, or drop files (open the address it prints):
    arc-transfer serve
  Open it on a phone in the same network, by the QR code it prints:
    arc-transfer serve --address 0.0.0.0
  The same with wire, gas and wanted mode of the welding procedure filled in:
    arc-transfer serve --address 0.0.0.0 --procedure wps.json
`;

const MORE = `
For students and phones, put the page on a web host instead ("arc-transfer page"): no warning, works offline.
By default only this machine reaches the page. With another address it is offered by HTTPS with a
certificate that is made at the first start and kept in the user's configuration folder; it holds for
those addresses and can sign for no others.
Recordings are judged and kept in the browser; this command receives none of them.
Exit status: 0 stopped; 2 wrong use.`;

/** `arc-transfer serve`: the browser page, for as long as it runs. */
export function registerServe(program: Command): void {
  program
    .command('serve')
    .description('offer the browser page: record, hear the verdict, try again')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', MORE)
    .option('--address <ip>', 'address to listen on (default 127.0.0.1, this machine only)')
    .option('--port <number>', 'port to listen on, 0 for any that is free (default 4590)')
    .option(
      '--procedure <file.json>',
      'the welding procedure; the address brings what it fixes of the set-up (arc-transfer help procedure)',
    )
    .action(async (options: Record<string, unknown>) => {
      const { serveCommand } = await import('../serve/command.js');
      await serveCommand(options);
    });
}
