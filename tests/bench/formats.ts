/**
 * Every kind of file that is read: how fast, in how much memory (each in a process of its own), and how
 * close to another program's decode of the same file, or to the values written. `npm run bench -- formats`
 * prints it; `--save` also writes `fixtures/reference/formats.json`, from which `npm run docs` makes the table in
 * README. Further arguments: `--minutes 5` of sound, `--rows 2000000` of log, `--only opus`.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hasProgram } from '../recordings/media.js';
import { compareLog, compareSound } from './formats/agreement.js';
import { type FormatCase, LOG_CASES, SOUND_CASES, type SoundCase } from './formats/cases.js';
import { makeLog } from './formats/make-logs.js';
import {
  decodeReference,
  encode,
  writeSoundSource,
  writeSpeechlikeSource,
} from './formats/make-sound.js';
import { type Measured, measureApart, peakMb, readOnly } from './formats/measure.js';

const flag = (name: string): string | undefined => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? undefined : process.argv[at + 1];
};
const MINUTES = Number(flag('minutes') ?? 5);
const ROWS = Number(flag('rows') ?? 2_000_000);
const ONLY = flag('only') ?? '';
/** Goals of speed: AAC 200 times real time, CSV 100 MB a second. */
const GOALS: Record<string, string> = {
  'memo.m4a': 'goal: 200',
  'trace.csv': 'goal: 100',
  'short.csv': 'goal: 100',
};

interface Row {
  file: string;
  format: string;
  title: string;
  reader: string;
  speed: number;
  speedUnit: 'times real time' | 'MB/s';
  peakMb: number;
  agreement: string;
  reference: string;
}

const SAVED = 'fixtures/reference/formats.json';
const rows: Row[] = [];
const folder = mkdtempSync(join(tmpdir(), 'arc-bench-'));

function checked(one: FormatCase, path: string): Measured {
  const measured = measureApart(path);
  if (measured.format !== one.format)
    throw new Error(`${one.file} was read as ${measured.format}, not ${one.format}`);
  return measured;
}

function add(one: FormatCase, measured: Measured, sound: boolean, agreement: string): void {
  const { samples, sampleRateHz, bytes, cpuS } = measured;
  const speed = sound ? samples / sampleRateHz / cpuS : bytes / 1e6 / cpuS;
  const speedUnit = sound ? ('times real time' as const) : ('MB/s' as const);
  const { file, format, title, reader, reference } = one;
  const peak = Math.round(measured.peakMb);
  // Two figures: the machine is shared.
  const said = Number(speed.toPrecision(2));
  rows.push({
    file,
    format,
    title,
    reader,
    speed: said,
    speedUnit,
    peakMb: peak,
    agreement,
    reference,
  });
  const goal = GOALS[file] ? ` (${GOALS[file]})` : '';
  console.log(
    `${title.padEnd(36)} ${String(said).padStart(5)} ${speedUnit}${goal}, ${peak} MB peak, ${agreement} [${reader}; against ${reference}]`,
  );
}

async function benchSound(one: SoundCase): Promise<void> {
  const path = encode(folder, one);
  const measured = checked(one, path);
  const reference = decodeReference(folder, one);
  const until = one.compareS && one.compareS * measured.sampleRateHz;
  const found = await compareSound(path, reference, one.delayUnknown ? 2048 : 0, until);
  const close = found.snrDb === null ? 'exact' : `${found.snrDb.toFixed(0)} dB`;
  // Against the sound that was encoded: the reference may keep padding that is none of it.
  const extra = measured.samples - 60 * MINUTES * measured.sampleRateHz;
  const length =
    extra === 0 ? '' : `, ${Math.abs(extra)} samples ${extra > 0 ? 'longer' : 'shorter'}`;
  add(one, measured, true, `${close}, shift ${found.lagSamples}${length}`);
  rmSync(path);
  rmSync(reference);
}

async function benchLog(one: FormatCase): Promise<void> {
  if (!(await makeLog(folder, one.file, ROWS))) {
    console.log(`${one.title}: skipped, python3 with NumPy and SciPy is not installed`);
    return;
  }
  const path = join(folder, one.file);
  const measured = checked(one, path);
  const largest = await compareLog(path, ROWS);
  add(one, measured, false, largest === 0 ? 'exact' : `within ${largest.toExponential(0)}`);
  rmSync(path);
}

async function benchAll(): Promise<void> {
  const wanted = (one: FormatCase): boolean => one.file.includes(ONLY);
  const empty = Math.round(peakMb());
  console.log(`sound of ${MINUTES} min at 44.1 kHz, logs of ${ROWS} rows; speed by processor time`);
  console.log(`a process that has read nothing yet holds ${empty} MB`);
  if (hasProgram('ffmpeg', '-version')) {
    const cases = SOUND_CASES.filter(wanted);
    const source = (name: string): string => join(folder, name);
    if (cases.some(({ program }) => program === 'ffmpeg'))
      await writeSoundSource(source('source.wav'), 60 * MINUTES);
    if (cases.some(({ program }) => program === 'sox'))
      await writeSpeechlikeSource(source('speechlike.wav'), 60 * MINUTES);
    for (const one of cases) {
      if (one.program === 'sox' && !hasProgram('sox', '--version'))
        console.log(`${one.title}: skipped, sox is not installed`);
      else await benchSound(one);
    }
  } else console.log('sound: skipped, ffmpeg is not installed to make the inputs');
  for (const one of LOG_CASES.filter(wanted)) await benchLog(one);
  if (process.argv.includes('--save')) save(empty);
}

/** With `--only`, the other rows stay as they were measured before. */
function save(emptyMb: number): void {
  const before: Row[] =
    ONLY && existsSync(SAVED) ? JSON.parse(readFileSync(SAVED, 'utf8')).rows : [];
  const all = [...SOUND_CASES, ...LOG_CASES].map(({ file }) => {
    const row = [...rows, ...before].find((one) => one.file === file);
    if (!row) throw new Error(`${file} was left out: nothing is saved.`);
    return row;
  });
  const machine = '2-core x86 virtual machine';
  const saved = { machine, soundMinutes: MINUTES, logRows: ROWS, emptyMb, rows: all };
  writeFileSync(SAVED, `${JSON.stringify(saved, null, 2)}\n`);
}

const only = flag('read');
try {
  if (only) console.log(JSON.stringify(await readOnly(only)));
  else await benchAll();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
