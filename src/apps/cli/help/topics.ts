import { readFile } from 'node:fs/promises';
import { ArcError, didYouMean } from '../../../core/index.js';
import { packageFile } from '../../../files/package-file.js';

/** A text of the built-in help. */
export interface Topic {
  name: string;
  about: string;
}

/** Every topic, in the order in which they are listed. */
export async function readTopics(): Promise<Topic[]> {
  return JSON.parse(await readFile(packageFile('dist/help/topics.json'), 'utf8'));
}

/**
 * The Markdown text of a topic.
 * @throws ArcError `unknown-topic`
 */
export async function readTopic(name: string, commands: readonly string[]): Promise<string> {
  const topics = await readTopics();
  const names = topics.map((one) => one.name);
  if (names.includes(name)) return readFile(packageFile(`dist/help/${name}.md`), 'utf8');
  throw new ArcError({
    code: 'unknown-topic',
    what: `There is no help on "${name}".${didYouMean(name, [...names, ...commands])}`,
    expected: `a command, or one of ${names.join(', ')}`,
    todo: 'arc-transfer help lists the commands and topics.',
  });
}
