import type { Command } from 'commander';
import { firstKnown, LANGUAGES, languageNamed, type Words } from '../../view/index.js';

/** Variables that name the language of a terminal, the strongest first (POSIX). */
const VARIABLES = ['LC_ALL', 'LC_MESSAGES', 'LANG'] as const;

/** Adds `--language`. JSON and CSV stay as they are in every language. */
export function addLanguageFlag(command: Command): Command {
  const known = LANGUAGES.map(({ lang }) => lang).join(' or ');
  return command.option(
    '--language <code>',
    `language of the words: ${known} (default: that of ${VARIABLES.join(', ')}, else en)`,
  );
}

/** The words asked for, else those of the environment. @throws ArcError `bad-language` */
export function readLanguage(
  options: Readonly<Record<string, unknown>>,
  environment: Readonly<Record<string, string | undefined>> = process.env,
): Words {
  const asked = options['language'];
  if (asked !== undefined) return languageNamed(String(asked));
  // The first that is set decides, also where it names a language that is not known here.
  const tag = VARIABLES.map((name) => environment[name]).find((one) => one);
  return firstKnown([tag ?? '']);
}
