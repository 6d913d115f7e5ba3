import { type Command, Option } from 'commander';
import type { Result } from '../../../analysis/result/index.js';
import { systemOfLocale, UNIT_SYSTEMS, type UnitSystem } from '../../../core/index.js';
import {
  ENGLISH,
  type Language,
  TERM_SETS,
  withTerms,
  withUnits,
} from '../../../messages/index.js';
import { crossCheckIn } from '../../../setup/check/index.js';

/** Codes by whether their heat input holds the thermal efficiency of the process. */
export const HEAT_CODES = ['aws', 'asme', 'en', 'iso'] as const;
export type HeatCode = (typeof HEAT_CODES)[number];

/** How a command says what it says. */
export interface Said {
  language: Language;
  units: UnitSystem;
  /** Null where no code was named: both ways of counting are given. */
  code: HeatCode | null;
}

/** Adds `--units`, `--terms` and `--code`. */
export function addLanguageFlags(command: Command): Command {
  return command
    .addOption(
      new Option('--units <system>', 'inch or metric; by the locale where not given').choices(
        UNIT_SYSTEMS,
      ),
    )
    .addOption(
      new Option(
        '--terms <set>',
        'names of the modes: aws (GMAW-S) or iso (dip transfer, D)',
      ).choices(Object.keys(TERM_SETS)),
    )
    .addOption(
      new Option(
        '--code <name>',
        'heat input as this code counts it: aws and asme without thermal efficiency, en and iso with it',
      ).choices(HEAT_CODES),
    );
}

/** The language that the options ask for. */
export function readLanguage(
  options: Readonly<Record<string, unknown>>,
  locale: string | undefined,
): Said {
  const units = UNIT_SYSTEMS.find((one) => one === options['units']) ?? systemOfLocale(locale);
  const inUnits = withUnits(ENGLISH, units);
  const terms = Object.entries(TERM_SETS).find(([name]) => name === options['terms'])?.[1];
  return {
    units,
    language: terms === undefined ? inUnits : withTerms(inUnits, terms),
    code: HEAT_CODES.find((one) => one === options['code']) ?? null,
  };
}

/** How heat input is counted by the code that was named. */
export function heatWith({ code }: Said): 'efficiency' | 'no-efficiency' | 'both' {
  if (code === null) return 'both';
  return code === 'aws' || code === 'asme' ? 'no-efficiency' : 'efficiency';
}

/** The comparison with the set-up in the words and units asked for. */
export function inWords(result: Result, said: Said | undefined): Result {
  if (said === undefined || !result.crossCheck) return result;
  return { ...result, crossCheck: crossCheckIn(result.crossCheck, said.language) };
}

/** The locale of the process, as POSIX ranks its variables. */
export function localeOf(env: NodeJS.ProcessEnv): string | undefined {
  return env['LC_ALL'] || env['LC_MEASUREMENT'] || env['LANG'] || undefined;
}
