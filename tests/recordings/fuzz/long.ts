/**
 * The long fuzz over every reader: `npm run fuzz`, with `--runs 500` cases a file, `--seed N`, `--only m4a`
 * (part of a file's name), `--list`. Each file is spoilt in a process of its own, which is watched for time and
 * memory from outside: a reader that hangs cannot stop itself. What fails is printed with the words that
 * repeat it.
 */
import { spawn } from 'node:child_process';
import {
  closeSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { clicksAndSweep, mediaFolder } from '../media.js';
import { type Damage, damage, spoil } from './damage.js';
import { SEEDS, type Seed } from './seeds.js';
import { survives } from './survives.js';

/** Longest that one case may take; the machine may be busy. */
const CASE_MS = 20_000;
/** Most that a process may hold while it reads files of some 10 kB. */
const MEMORY_MB = 700;
const POLL_MS = 250;

const flag = (name: string): string | undefined => {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? undefined : process.argv[at + 1];
};
const RUNS = Number(flag('runs') ?? 500);
const SEED = Number(flag('seed') ?? Date.now() % 2 ** 31);
const ONLY = flag('only') ?? '';

/** Spoils one file again and again; each case is put down in `logPath` before it is tried. */
async function fuzzOne(seed: Seed, logPath: string): Promise<void> {
  const media = mediaFolder(clicksAndSweep(0.4));
  const good = await seed.bytes(media);
  media.remove();
  const whole = await survives(good, seed.options);
  if (whole !== 'samples') throw new Error('the file as it is gives an error');
  const log = openSync(logPath, 'w');
  const counts = { samples: 0, error: 0 };
  const attempt = async (how: Damage): Promise<void> => {
    writeSync(log, `${JSON.stringify(how)}\n`, 0);
    counts[await survives(spoil(good, how), seed.options)]++;
  };
  const single = flag('case');
  try {
    if (single) await attempt(JSON.parse(single));
    else {
      const property = fc.asyncProperty(damage, attempt);
      await fc.assert(property, { numRuns: RUNS, seed: SEED, endOnFailure: true });
    }
  } finally {
    closeSync(log);
  }
  process.stdout.write(`${counts.samples} gave samples, ${counts.error} an error of ours`);
}

interface Ended {
  out: string;
  problem?: string;
}

/** Runs {@link fuzzOne} apart and watches it. */
function watched(seed: Seed, logPath: string): Promise<Ended> {
  const args = [process.argv[1]!, '--one', seed.name, '--log', logPath, '--seed', String(SEED)];
  const single = flag('case');
  args.push('--runs', String(RUNS), ...(single ? ['--case', single] : []));
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'pipe'] });
  const started = Date.now();
  let out = '';
  let error = '';
  let problem: string | undefined;
  child.stdout.on('data', (text) => {
    out += text;
  });
  child.stderr.on('data', (text) => {
    error += text;
  });
  const timer = setInterval(() => {
    const heldMb = residentMb(child.pid!);
    if (heldMb > MEMORY_MB) problem = `holds ${heldMb.toFixed(0)} MB`;
    else if (Date.now() - lastCaseMs(logPath, started) > CASE_MS)
      problem = `has not ended after ${CASE_MS / 1000} s`;
    if (problem) child.kill('SIGKILL');
  }, POLL_MS);
  return new Promise((resolve) =>
    child.on('close', (status) => {
      clearInterval(timer);
      if (status !== 0) problem ??= error.trim() || `ended with ${status}`;
      resolve(problem === undefined ? { out } : { out, problem });
    }),
  );
}

/** When the last case began; making the file may take a while before the first. */
function lastCaseMs(logPath: string, started: number): number {
  try {
    return statSync(logPath).mtimeMs;
  } catch {
    return started + 2 * CASE_MS;
  }
}

/** Resident memory of a process; 0 where the system does not tell. */
function residentMb(pid: number): number {
  try {
    const status = readFileSync(`/proc/${pid}/status`, 'utf8');
    return Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}

async function fuzzAll(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'arc-fuzz-'));
  const logPath = join(folder, 'case.json');
  console.log(`seed ${SEED}, ${RUNS} cases a file; repeat with --seed ${SEED} --runs ${RUNS}`);
  for (const seed of SEEDS.filter(({ name }) => name.includes(ONLY))) {
    if (!seed.available) {
      console.log(`${seed.name}: skipped, the program that makes it is not installed`);
      continue;
    }
    rmSync(logPath, { force: true });
    const begun = Date.now();
    const { out, problem } = await watched(seed, logPath);
    console.log(
      `${seed.name}: ${problem ? 'FAILED' : out} (${((Date.now() - begun) / 1000).toFixed(0)} s)`,
    );
    if (problem) {
      process.exitCode = 1;
      console.log(problem.slice(0, 3000));
      console.log(`repeat: npm run fuzz -- --only '${seed.name}' --case '${lastCase(logPath)}'`);
    }
  }
  rmSync(folder, { recursive: true, force: true });
}

function lastCase(logPath: string): string {
  try {
    return readFileSync(logPath, 'utf8').split('\n', 1)[0] ?? '';
  } catch {
    return '';
  }
}

const one = flag('one');
if (process.argv.includes('--list')) console.log(SEEDS.map(({ name }) => name).join('\n'));
else if (one === undefined) await fuzzAll();
else await fuzzOne(SEEDS.find(({ name }) => name === one)!, flag('log')!);
