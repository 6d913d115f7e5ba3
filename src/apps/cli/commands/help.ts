import type { Command } from 'commander';
import { lookOf } from '../../terminal/look.js';
import { writeOut } from '../../terminal/output.js';

const EXAMPLES = `Examples
    arc-transfer help formats
    arc-transfer help watch
`;

/** `arc-transfer help`: the help of a command, or a topic that is longer than one. */
export function registerHelp(program: Command): void {
  program
    .command('help')
    .description('print a topic (formats, trust, clusters …), or the help of a command')
    .argument('[name]', 'a topic or a command; without it both are listed')
    .addHelpText('before', EXAMPLES)
    .action(async (name: string | undefined) => {
      const { readTopic, readTopics } = await import('../help/topics.js');
      const commands = program.commands.map((one) => one.name());
      const command = program.commands.find((one) => one.name() === name && name !== 'help');
      if (command) command.outputHelp();
      else if (name === undefined) {
        program.outputHelp();
        const list = (await readTopics()).map((one) => `  ${one.name.padEnd(10)} ${one.about}`);
        await writeOut(`\nTopics (arc-transfer help <topic>):\n${list.join('\n')}\n`);
      } else {
        const text = await readTopic(name, commands);
        const { printMarkdown } = await import('../help/print-markdown.js');
        await writeOut(printMarkdown(text, lookOf(process.stdout)));
      }
    });
}
