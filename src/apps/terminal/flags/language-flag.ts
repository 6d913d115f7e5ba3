import { type Command, Option } from 'commander';
import { systemOfLocale, UNIT_SYSTEMS } from '../../../core/index.js';
import { TERM_SETS } from '../../../messages/index.js';
import {
  firstKnown,
  LANGUAGES,
  languageNamed,
  type Reader,
  type Words,
  wordsFor,
} from '../../view/index.js';

/** Variables that name the language of a terminal, the strongest first (POSIX). */
const VARIABLES = ['LC_ALL', 'LC_MESSAGES', 'LANG'] as const;
/** Those that name its units. */
const OF_UNITS = ['LC_ALL', 'LC_MEASUREMENT', 'LANG'] as const;

/** Codes by whether their heat input holds the thermal efficiency of the process. */
const HEAT_CODES = {
  aws: 'no-efficiency',
  asme: 'no-efficiency',
  en: 'efficiency',
  iso: 'efficiency',
} as const;

type Options = Readonly<Record<string, unknown>>;
type Environment = Readonly<Record<string, string | undefined>>;

/** Adds `--language`. JSON and CSV stay as they are in every language. */
function addLanguageFlag(command: Command): Command {
  const known = LANGUAGES.map(({ lang }) => lang).join(' or ');
  return command.option(
    '--language <code>',
    `language of the words: ${known} (default: that of ${VARIABLES.join(', ')}, else en)`,
  );
}

/** Adds `--language`, `--units` and `--terms`. */
export function addWordFlags(command: Command): Command {
  return addLanguageFlag(command)
    .addOption(
      new Option(
        '--units <system>',
        'inch or metric, for what people read; by the locale where not given (tables and JSON keep the units that their names carry)',
      ).choices(UNIT_SYSTEMS),
    )
    .addOption(
      new Option(
        '--terms <set>',
        'names of the modes: aws (GMAW-S) or iso (dip transfer, D)',
      ).choices(Object.keys(TERM_SETS)),
    );
}

/** Adds `--language`, `--units`, `--terms` and `--code`. */
export function addReaderFlags(command: Command): Command {
  return addWordFlags(command).addOption(
    new Option(
      '--code <name>',
      'heat input as this code counts it: aws and asme without thermal efficiency, en and iso with it',
    ).choices(Object.keys(HEAT_CODES)),
  );
}

/** The words asked for, else those of the environment. @throws ArcError `bad-language` */
export function readLanguage(options: Options, environment: Environment = process.env): Words {
  const asked = options['language'];
  if (asked !== undefined) return languageNamed(String(asked));
  // The first that is set decides, also where it names a language that is not known here.
  return firstKnown([firstSet(VARIABLES, environment) ?? '']);
}

/** The words in the units and with the names asked for. @throws ArcError `bad-language` */
export function readWords(options: Options, environment: Environment = process.env): Words {
  const locale = firstSet(OF_UNITS, environment);
  return wordsFor(readLanguage(options, environment), {
    units: UNIT_SYSTEMS.find((one) => one === options['units']) ?? systemOfLocale(locale),
    terms: Object.keys(TERM_SETS).find((one) => one === options['terms']) as Reader['terms'],
    heat: Object.entries(HEAT_CODES).find(([code]) => code === options['code'])?.[1],
  });
}

function firstSet(names: readonly string[], environment: Environment): string | undefined {
  return names.map((name) => environment[name]).find((one) => one);
}
