import type { Command } from 'commander';
import {
  parseSettings,
  SETTINGS,
  type Setting,
  type Settings,
  UNTOLD_ARC_PRIOR,
} from '../../../analysis/index.js';

/** Defaults of a command that differ from those of the list. */
type Defaults = Partial<Settings>;

/** For commands that hear whatever comes. */
export const NOTHING_TOLD: Defaults = { arcPrior: UNTOLD_ARC_PRIOR };

/** Adds a flag for every setting of the analysis. */
export function addSettingFlags(command: Command, defaults: Defaults = {}): Command {
  command.optionsGroup('Analysis settings (the defaults suit almost every recording):');
  for (const one of SETTINGS) {
    const unit = one.unit === '1' ? 'number' : one.unit;
    command.option(
      `--${one.flag} <${unit}>`,
      `${one.what} (default ${sayDefault(one, defaults[one.key] ?? one.default)})`,
    );
  }
  return command;
}

/** Settings from the parsed options; what was not given takes its default. Throws as `parseSettings`. */
export function readSettings(
  options: Readonly<Record<string, unknown>>,
  defaults: Defaults = {},
): Settings {
  const given: Record<string, unknown> = {};
  for (const one of SETTINGS) given[one.key] = options[flagKey(one.flag)] ?? defaults[one.key];
  return parseSettings(given);
}

function sayDefault(one: Setting, value: number): string {
  return one.unit === '1' ? String(value) : `${value} ${one.unit}`;
}

function flagKey(flag: string): string {
  return flag.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
