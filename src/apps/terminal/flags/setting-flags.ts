import type { Command } from 'commander';
import { parseSettings, SETTINGS, type Setting, type Settings } from '../../../analysis/index.js';

/** Adds a flag for every setting of the analysis. */
export function addSettingFlags(command: Command): Command {
  command.optionsGroup('Analysis settings (the defaults suit almost every recording):');
  for (const one of SETTINGS) {
    const unit = one.unit === '1' ? 'number' : one.unit;
    command.option(`--${one.flag} <${unit}>`, `${one.what} (default ${sayDefault(one)})`);
  }
  return command;
}

/** Settings from the parsed options; what was not given takes its default. Throws as `parseSettings`. */
export function readSettings(options: Readonly<Record<string, unknown>>): Settings {
  const given: Record<string, unknown> = {};
  for (const one of SETTINGS) given[one.key] = options[flagKey(one.flag)];
  return parseSettings(given);
}

function sayDefault(one: Setting): string {
  return one.unit === '1' ? String(one.default) : `${one.default} ${one.unit}`;
}

function flagKey(flag: string): string {
  return flag.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
