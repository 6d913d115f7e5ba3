import type { Settings, WantedMode } from '../../analysis/index.js';
import { ArcError, didYouMean, MODES, type Mode } from '../../core/index.js';
import type { ReadOptions } from '../../recording/index.js';
import type { Setup } from '../../setup/index.js';
import { readReading } from '../terminal/flags/reading-flags.js';
import { NOTHING_TOLD, readSettings } from '../terminal/flags/setting-flags.js';
import { readSetup } from '../terminal/flags/setup-flags.js';
import { checkProgram } from './find-program.js';
import { LACKS, type Lack } from './lack.js';
import { type MqttOptions, readMqtt } from './mqtt/options.js';

/** Everything the user stated, checked. */
export interface WatchOptions {
  reading: ReadOptions;
  settings: Settings;
  setup: Setup;
  expectation: WantedMode | null;
  /** For an expectation that is told later. */
  expectTimes: Omit<WantedMode, 'mode'>;
  /** Expected mode by program number or name; null expects nothing. */
  programs: ReadonlyMap<string, Mode | null>;
  /** Recordings of welds, or folders of them, that are vouched for as being in the expected mode. */
  good: readonly string[];
  /** No alarm within so long after an arc start, s. */
  tackS: number;
  /** Silence of the line after which the signal counts as lost, s. */
  lostAfterS: number;
  /** Time without an arc that is said, s; infinite where it is not. */
  noArcAfterS: number;
  /** What raises the alarm beside departures. */
  alarmAlso: ReadonlySet<Lack>;
  speed: number;
  follow: boolean;
  /** A followed file ends when it has not grown for so long, s. */
  endAfterS: number;
  baud: number;
  welds: string | undefined;
  onAlarm: readonly string[] | undefined;
  json: boolean;
  mqtt: MqttOptions | undefined;
}

type Raw = Readonly<Record<string, unknown>>;

/** @throws ArcError for whatever is not understood or does not go together. */
export async function readWatchOptions(raw: Raw): Promise<WatchOptions> {
  const tolerateS = seconds(raw, 'tolerate', 0, 600) ?? 0.5;
  const alarmAfterS = seconds(raw, 'alarmAfter', 0, 600) ?? Math.max(1, tolerateS);
  if (alarmAfterS < tolerateS) throw contradiction(tolerateS, alarmAfterS);
  const expectTimes = { tolerateS, alarmAfterS };
  const setup = await readSetup(raw);
  const mode = setup.expectedMode;
  const programs = readPrograms(text(raw['programs']));
  const alarmAlso = readAlarmAlso(text(raw['alarmAlso']));
  const quiet = !mode && programs.size === 0 && alarmAlso.size === 0;
  if (raw['onAlarm'] !== undefined && quiet && !raw['mqtt'])
    throw needs('--on-alarm', '--expect <mode>, --programs or --alarm-also');
  const good = Array.isArray(raw['good']) ? raw['good'] : [];
  if (good.length > 0 && !mode) throw needs('--good', '--expect <mode>');
  const onAlarm = readOnAlarm(raw);
  if (onAlarm) await checkProgram(onAlarm[0]!);
  const welds = text(raw['welds']);
  return {
    reading: readReading(raw),
    settings: readSettings(raw, NOTHING_TOLD),
    setup,
    expectation: mode === null ? null : { mode, ...expectTimes },
    expectTimes,
    programs,
    good,
    tackS: seconds(raw, 'tack', 0, 60) ?? 1,
    lostAfterS: seconds(raw, 'lostAfter', 0.1, 3600) ?? 1,
    noArcAfterS: seconds(raw, 'arcMissingAfter', 1, 604_800) ?? Number.POSITIVE_INFINITY,
    alarmAlso,
    speed: readSpeed(text(raw['speed'])),
    follow: raw['follow'] === true,
    endAfterS: seconds(raw, 'endAfter', 0.1, 1e6) ?? Number.POSITIVE_INFINITY,
    baud: number(raw, 'baud', 300, 4_000_000) ?? 115_200,
    welds,
    onAlarm,
    json: raw['json'] === true,
    mqtt: await readMqtt(raw, welds),
  };
}

/** A mode by its name; null for `none` and for nothing. @throws ArcError `bad-expect` */
export function expected(given: string | undefined): Mode | null {
  if (given === undefined || given === 'none') return null;
  const name = given.trim().toLowerCase();
  const mode = MODES.find((one) => one === name);
  if (mode) return mode;
  throw bad('expect', given, `one of ${MODES.join(', ')}`, didYouMean(name, MODES));
}

function readAlarmAlso(given: string | undefined): Set<Lack> {
  const words = given?.split(',').map((word) => word.trim().toLowerCase()) ?? [];
  return new Set(
    words.map((word) => {
      const lack = LACKS.find((one) => one === word);
      if (lack) return lack;
      throw bad('alarm-also', word, `any of ${LACKS.join(',')}`, didYouMean(word, LACKS));
    }),
  );
}

function readOnAlarm(raw: Raw): string[] | undefined {
  const [program, args] = [text(raw['onAlarm']), raw['onAlarmArg']];
  if (program === undefined && args !== undefined) throw needsProgram();
  return program === undefined ? undefined : [program, ...(Array.isArray(args) ? args : [])];
}

function readPrograms(given: string | undefined): Map<string, Mode | null> {
  const programs = new Map<string, Mode | null>();
  for (const part of given?.split(',') ?? []) {
    const [name = '', mode = ''] = part.split('=').map((word) => word.trim());
    if (name === '' || mode === '') throw bad('programs', part, 'pairs such as 1=spray,2=none');
    programs.set(name, expected(mode));
  }
  return programs;
}

function readSpeed(given: string | undefined): number {
  if (given === undefined) return 1;
  if (given === 'max') return Number.POSITIVE_INFINITY;
  const speed = Number(given.replace(/x$/i, ''));
  if (speed >= 0.1 && speed <= 1000) return speed;
  throw bad('speed', given, 'a factor from 0.1 to 1000, or max');
}

/** Reads `0.5`, `0.5s` or `500ms` in s. */
function seconds(raw: Raw, key: string, min: number, max: number): number | undefined {
  const given = text(raw[key]);
  if (given === undefined) return undefined;
  const match = /^(\d+\.?\d*|\.\d+)\s*(ms|s|min)?$/i.exec(given.trim());
  const factor = { ms: 1e-3, s: 1, min: 60 }[match?.[2]?.toLowerCase() ?? 's'] ?? 1;
  const value = match ? Number(match[1]) * factor : Number.NaN;
  if (value >= min && value <= max) return value;
  throw bad(flagOf(key), given, `a time from ${min} s to ${max} s, such as 0.5s`);
}

function number(raw: Raw, key: string, min: number, max: number): number | undefined {
  const given = text(raw[key]);
  if (given === undefined) return undefined;
  const value = Number(given);
  if (Number.isInteger(value) && value >= min && value <= max) return value;
  throw bad(flagOf(key), given, `a whole number from ${min} to ${max}`);
}

function flagOf(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

function bad(flag: string, given: string, wanted: string, hint = ''): ArcError {
  return new ArcError({
    code: `bad-${flag}`,
    what: `--${flag} was given "${given}".${hint}`,
    expected: wanted,
    todo: 'arc-transfer watch --help explains it.',
  });
}

function needs(flag: string, other: string): ArcError {
  return new ArcError({
    code: 'nothing-expected',
    what: `${flag} was given, but no mode is expected.`,
    expected: other,
    todo: 'Say which mode the weld should be in.',
  });
}

function needsProgram(): ArcError {
  return new ArcError({
    code: 'no-alarm-program',
    what: '--on-alarm-arg was given without a program.',
    expected: '--on-alarm <program> with it',
    todo: 'Name the program.',
  });
}

function contradiction(tolerateS: number, alarmAfterS: number): ArcError {
  return new ArcError({
    code: 'bad-alarm-after',
    what: `The alarm is to come after ${alarmAfterS} s, but ${tolerateS} s are tolerated.`,
    expected: '--alarm-after not shorter than --tolerate',
    todo: 'Lengthen the one or shorten the other.',
  });
}
