import { ArcError, didYouMean } from '../core/index.js';
import {
  defaultSettings,
  SETTINGS,
  type Setting,
  type SettingKey,
  type Settings,
} from './settings.js';

/**
 * Settings from what a user gave, by key (`soundWindowS`): numbers, or text such as `0.5` or `0.5s`.
 * What is absent takes its default.
 *
 * @throws ArcError `unknown-setting`, `bad-setting` (not a number, other unit, out of range).
 */
export function parseSettings(given: Readonly<Record<string, unknown>>): Settings {
  const known = new Map<string, Setting>(SETTINGS.map((one) => [one.key, one]));
  const values: Record<SettingKey, number> = { ...defaultSettings() };
  for (const [key, raw] of Object.entries(given)) {
    if (raw === undefined) continue;
    const setting = known.get(key);
    if (!setting) throw unknownSetting(key, [...known.keys()]);
    values[key as SettingKey] = parseValue(setting, raw);
  }
  return values;
}

function parseValue(setting: Setting, raw: unknown): number {
  const value = typeof raw === 'number' ? raw : readNumber(setting, String(raw));
  if (Number.isFinite(value) && value >= setting.min && value <= setting.max) return value;
  throw badSetting(setting, raw);
}

function readNumber(setting: Setting, text: string): number {
  const match = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z%]*)\s*$/i.exec(text);
  if (!match) throw badSetting(setting, text);
  const [, digits, unit] = match;
  if (unit === '' || unit === setting.unit) return Number(digits);
  throw badSetting(setting, text);
}

function badSetting(setting: Setting, raw: unknown): ArcError {
  const unit = setting.unit === '1' ? '' : ` ${setting.unit}`;
  return new ArcError({
    code: 'bad-setting',
    what: `--${setting.flag} was given "${String(raw)}".`,
    expected: `a number from ${setting.min} to ${setting.max}${unit}`,
    todo: `Leave it out for the default of ${setting.default}${unit}.`,
  });
}

function unknownSetting(key: string, known: readonly string[]): ArcError {
  return new ArcError({
    code: 'unknown-setting',
    what: `There is no setting "${key}".${didYouMean(key, known)}`,
    expected: `one of ${known.join(', ')}`,
    todo: 'Correct the name or leave it out.',
  });
}
