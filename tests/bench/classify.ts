/**
 * How fast and in how much memory recordings are judged: a long WAV and a long trace through the whole
 * pipeline, against the floor that reading and the same number of transforms alone would set, and against
 * a SciPy script that computes comparable features (skipped where SciPy is absent).
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { analyse, defaultSettings } from '../../src/analysis/index.js';
import { wavBlob } from '../../src/apps/report/client/index.js';
import { createRandom } from '../../src/core/index.js';
import { hannWindow, RealFft } from '../../src/dsp/index.js';
import { openFileSource } from '../../src/files/file-source.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import { openRecording } from '../../src/recording/index.js';
import { parseSetup } from '../../src/setup/index.js';
import { sayFigure } from './support/figure.js';

const RATE_HZ = 44_100;
const MINUTES = Number(process.argv[2] ?? 10);
const folder = mkdtempSync(join(tmpdir(), 'arc-bench-'));

/** A mono 16-bit WAV of noise with cracks at 90 a second. */
async function writeLongWav(path: string, seconds: number): Promise<void> {
  const random = createRandom(440);
  const period = Math.round(RATE_HZ / 90);
  const samples = Int16Array.from({ length: seconds * RATE_HZ }, (_, i) => {
    const level = 600 + 6000 * Math.exp(-(i % period) / 25);
    return level * (random.next() + random.next() - 1);
  });
  writeFileSync(path, new Uint8Array(await wavBlob([samples], RATE_HZ).arrayBuffer()));
}

async function judge(path: string): Promise<number> {
  const source = await openFileSource(path);
  const started = process.cpuUsage();
  const recording = await openRecording(source);
  await analyse(recording, {
    setup: parseSetup({}),
    settings: defaultSettings(),
    loadModel: loadShippedModel,
    path,
    sha256: null,
    host: 'node',
  });
  await source.close();
  return seconds(process.cpuUsage(started));
}

/** Reading alone, and reading with as many 2,048-point transforms as the sound has frames. */
async function floor(path: string): Promise<number> {
  const source = await openFileSource(path);
  const started = process.cpuUsage();
  const recording = await openRecording(source);
  const fft = new RealFft(2048);
  const window = hannWindow(2048);
  for await (const { channels } of recording.blocks())
    for (let at = 0; at + 2048 <= channels[0]!.length; at += 2048)
      fft.transform(channels[0]!, at, window);
  await source.close();
  return seconds(process.cpuUsage(started));
}

function seconds({ user, system }: NodeJS.CpuUsage): number {
  return (user + system) / 1e6;
}

function scipy(path: string): number | null {
  const script = join(import.meta.dirname, '../fixtures/reference/comparable_features.py');
  const run = spawnSync('/usr/bin/python3', [script, path], { encoding: 'utf8' });
  return run.status === 0 ? Number(run.stdout) : null;
}

const wav = join(folder, 'long.wav');
await writeLongWav(wav, 60 * MINUTES);
const ours = await judge(wav);
const least = await floor(wav);
const theirs = scipy(wav);
const times = (cpu: number) => `${((60 * MINUTES) / cpu).toFixed(0)} times real time`;
console.log(`sound, ${MINUTES} min at 44.1 kHz (${(statSync(wav).size / 1e6).toFixed(0)} MB)`);
console.log(`  whole judgement  ${ours.toFixed(2)} s CPU, ${times(ours)} (goal: 10 min in 2 s)`);
console.log(
  `  reading and FFTs ${least.toFixed(2)} s CPU; the whole is ${(ours / least).toFixed(1)} times that`,
);
console.log(
  theirs === null
    ? '  SciPy script     skipped: python3-scipy is not installed'
    : `  SciPy script     ${theirs.toFixed(2)} s CPU, ${(theirs / ours).toFixed(1)} times ours (goal: 3)`,
);
console.log(`  peak memory      ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`);
sayFigure({
  name: 'sound, times real time on one core',
  value: Math.round((60 * MINUTES) / ours),
  unit: 'x',
  better: 'more',
  ...(theirs === null
    ? {}
    : { baseline: { name: 'SciPy script', value: Math.round((60 * MINUTES) / theirs) } }),
});
const short = join(folder, 'short.wav');
await writeLongWav(short, 10);
const cli = join(import.meta.dirname, '../bin/arc-transfer.js');
const started = performance.now();
execFileSync(process.execPath, [cli, 'classify', short, '--json']);
console.log(
  `cold start on 10 s of sound: ${((performance.now() - started) / 1000).toFixed(2)} s (goal: 0.5 s)`,
);
rmSync(folder, { recursive: true });
