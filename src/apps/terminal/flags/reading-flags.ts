import type { Command } from 'commander';
import { ArcError, didYouMean } from '../../../core/index.js';
import { parseRawFormat, type ReadOptions } from '../../../recording/index.js';

const MAP_KEYS = ['sound', 'voltage', 'current', 'time'] as const;
const SCALE_KEYS = ['voltage', 'current'] as const;

/**
 * Adds what a user states about how to read a file. `layoutFlag` names the one for bare samples where
 * `--format` already means the output.
 */
export function addReadingFlags(
  command: Command,
  layoutFlag: 'format' | 'raw-format' = 'format',
): Command {
  return command
    .optionsGroup('Reading (nothing about channel, unit or rate is guessed silently):')
    .option('--channel <map>', 'which channel is which, counted from 1, e.g. voltage=1,current=2')
    .option('--map <map>', 'the same by column or data set name, e.g. "voltage=U arc,time=t"')
    .option(
      '--scale <factors>',
      'volts and amperes at digital full scale, or per unit of the column, e.g. voltage=100,current=1000',
    )
    .option('--sample-rate <Hz>', 'rate of a log without a time column, e.g. 20000 or 20kHz')
    .option(
      `--${layoutFlag} <layout>`,
      'bare samples without a header, e.g. s16le:2 (encoding:channels), with --sample-rate',
    );
}

/**
 * What was stated about reading, by the flags that `addReadingFlags` added under the same `layoutFlag`.
 *
 * @throws ArcError `bad-map`, `bad-scale`, `bad-sample-rate`.
 */
export function readReading(
  options: Readonly<Record<string, unknown>>,
  layoutFlag: 'format' | 'raw-format' = 'format',
): ReadOptions {
  const reading: ReadOptions = {};
  const map = { ...channels(text(options['channel'])), ...columns(text(options['map'])) };
  const channel = channels(text(options['channel']));
  for (const key of MAP_KEYS) {
    if (channel[key] !== undefined && map[key] !== channel[key]) throw twice(key);
  }
  if (Object.keys(map).length > 0) reading.channelMap = map;
  const scale = factors(text(options['scale']));
  if (Object.keys(scale).length > 0) reading.scale = scale;
  const rate = text(options['sampleRate']);
  if (rate !== undefined) reading.sampleRateHz = sampleRate(rate);
  const layout = text(options[layoutFlag === 'format' ? 'format' : 'rawFormat']);
  if (layout !== undefined) reading.raw = parseRawFormat(layout);
  return reading;
}

type ChannelMap = NonNullable<ReadOptions['channelMap']>;

function channels(given: string | undefined): ChannelMap {
  return pairs(given, '--channel', MAP_KEYS, (value, whole) => {
    if (/^[1-9]\d{0,4}$/.test(value)) return Number(value);
    throw bad('bad-map', '--channel', whole, 'channel numbers from 1, such as voltage=1,current=2');
  });
}

function columns(given: string | undefined): ChannelMap {
  return pairs<(typeof MAP_KEYS)[number], string | number>(
    given,
    '--map',
    MAP_KEYS,
    (value) => value,
  );
}

function factors(given: string | undefined): NonNullable<ReadOptions['scale']> {
  return pairs(given, '--scale', SCALE_KEYS, (value, whole) => {
    const factor = Number(value);
    if (value !== '' && Number.isFinite(factor) && factor !== 0) return factor;
    throw bad('bad-scale', '--scale', whole, 'factors other than 0, such as voltage=100');
  });
}

/** `a=1,b=2`. A comma only ends a pair where a new `name=` follows, so that names may hold commas. */
function pairs<K extends string, V>(
  given: string | undefined,
  flag: string,
  keys: readonly K[],
  parse: (value: string, whole: string) => V,
): Partial<Record<K, V>> {
  const found: Partial<Record<K, V>> = {};
  if (given === undefined) return found;
  for (const part of given.split(/,(?=\s*[A-Za-z]+\s*=)/)) {
    const at = part.indexOf('=');
    const name = part.slice(0, Math.max(at, 0)).trim().toLowerCase();
    const key = keys.find((one) => one === name);
    const value = part.slice(at + 1).trim();
    if (at < 0 || key === undefined || value === '') {
      const hint = at < 0 ? '' : didYouMean(name, keys);
      throw bad(
        'bad-map',
        flag,
        `${part.trim()}`,
        `name=value with one of ${keys.join(', ')}`,
        hint,
      );
    }
    if (found[key] !== undefined) throw twice(key);
    found[key] = parse(value, part.trim());
  }
  return found;
}

function sampleRate(given: string): number {
  const match = /^(\d+\.?\d*(?:e\d+)?)\s*(hz|khz|mhz)?$/i.exec(given.trim());
  const factor = { hz: 1, khz: 1e3, mhz: 1e6 }[match?.[2]?.toLowerCase() ?? 'hz'] ?? 1;
  const rate = match ? Number(match[1]) * factor : Number.NaN;
  if (rate > 0 && rate <= 100e6) return rate;
  throw bad('bad-sample-rate', '--sample-rate', given, 'above 0 and up to 100 MHz, such as 20000');
}

function bad(code: string, flag: string, given: string, expected: string, hint = ''): ArcError {
  return new ArcError({
    code,
    what: `${flag} was given "${given}".${hint}`,
    expected,
    todo: 'arc-transfer inspect <file> shows what a file holds.',
  });
}

function twice(key: string): ArcError {
  return new ArcError({
    code: 'bad-map',
    what: `"${key}" is given twice.`,
    expected: 'each quantity once',
    todo: 'Leave one of them out.',
  });
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}
