import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  linkSync,
  mkdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const demo = (name: string): string => join(import.meta.dirname, '../../fixtures/recordings', name);
const whole = readFileSync(demo('spray.csv'));

let cwd: string;
beforeEach(() => {
  cwd = scratch({
    'labels.csv': 'file,mode\nweld.csv,spray\n',
    'setups.csv': 'file,gas\nweld.csv,C1\n',
  });
  mkdirSync(join(cwd, 'runs'));
  for (const name of ['weld.csv', 'runs/weld.csv', 'runs/labels.csv'])
    copyFileSync(demo('spray.csv'), join(cwd, name));
  linkSync(join(cwd, 'weld.csv'), join(cwd, 'hard.csv'));
  symlinkSync('weld.csv', join(cwd, 'soft.csv'));
  symlinkSync('.', join(cwd, 'loop'));
});

describe('an output', () => {
  // Each wrote over the recording, or over what the run was told by, when asked to overwrite.
  it.each([
    ['classify weld.csv --json --out weld.csv --overwrite'],
    ['classify weld.csv --json --out ./runs/../weld.csv --overwrite'],
    ['classify weld.csv --json --out hard.csv --overwrite'],
    ['classify weld.csv --json --out soft.csv --overwrite'],
    ['classify weld.csv --json --out loop/weld.csv --overwrite'],
    ['classify weld.csv --report weld.csv --overwrite'],
    ['report weld.csv --out weld.csv --overwrite'],
    ['report weld.csv --format svg --out hard.csv --overwrite'],
    ['label weld.csv --out weld.csv --overwrite'],
    ['label weld.csv --out hard.csv --overwrite'],
    ['label runs --out runs/weld.csv --overwrite'],
    ['label runs --out runs/labels.csv --resume'],
    ['label weld.csv --setups setups.csv --out setups.csv --overwrite'],
    ['evaluate labels.csv --out labels.csv --overwrite'],
    ['evaluate labels.csv --out weld.csv --overwrite'],
    ['fit --from labels.csv --out weld.csv --overwrite'],
  ])('%s leaves what it reads alone', async (line) => {
    const before = ['labels.csv', 'setups.csv'].map((name) =>
      readFileSync(join(cwd, name), 'utf8'),
    );
    const run = await runCli(line.split(' '), { cwd });
    expect(run.stderr).toMatch(/\[(output-is-input|too-few-groups|one-group|[a-z-]*folds?)\]/);
    for (const name of ['weld.csv', 'runs/weld.csv', 'runs/labels.csv'])
      expect(readFileSync(join(cwd, name)).equals(whole)).toBe(true);
    expect(
      ['labels.csv', 'setups.csv'].map((name) => readFileSync(join(cwd, name), 'utf8')),
    ).toEqual(before);
    expect(run.status).toBe(2);
  });

  it('is refused where the shell appends it to what is read', async () => {
    const program = join(import.meta.dirname, '../../bin/arc-transfer.js');
    const shell = () =>
      execFileSync(
        'sh',
        ['-c', `"${process.execPath}" "${program}" classify weld.csv --json >> weld.csv`],
        {
          cwd,
          stdio: 'pipe',
        },
      );
    expect(shell).toThrow(/output-is-input/);
    expect(readFileSync(join(cwd, 'weld.csv')).equals(whole)).toBe(true);
  });

  it('of label may replace an earlier table in a folder that is labelled', async () => {
    const args = ['label', 'runs', '--out', 'runs/table.csv'];
    expect((await runCli(args, { cwd })).status).toBe(0);
    const again = await runCli([...args, '--overwrite'], { cwd });
    expect([again.status, again.stderr]).toEqual([0, expect.stringContaining('2 rows')]);
  });

  it('of simulate does not take the place of a recording', async () => {
    const args = ['simulate', 'weld', '--seconds', '0.5', '--no-sound'];
    const run = await runCli(args, { cwd });
    expect([run.status, run.stderr]).toEqual([2, expect.stringContaining('file-exists')]);
    expect(readFileSync(join(cwd, 'weld.csv')).equals(whole)).toBe(true);
    expect((await runCli([...args, '--overwrite'], { cwd })).status).toBe(0);
  });

  // Tracks and clips beside the recordings made every recording an output of the run: none was labelled.
  it('of label may lie beside the recordings', async () => {
    const args = ['label', 'runs', '--out', 't.csv', '--tracks', 'runs', '--clips', 'runs'];
    const run = await runCli(args, { cwd });
    expect(run.stderr).toMatch(/bad-clip-list/);
    expect(readFileSync(join(cwd, 'runs/labels.csv')).equals(whole)).toBe(true);
    copyFileSync(demo('spray.csv'), join(cwd, 'runs/other.csv'));
    execFileSync('rm', [join(cwd, 'runs/labels.csv')]);
    const good = await runCli([...args, '--overwrite'], { cwd });
    expect([good.status, good.stderr]).toEqual([0, expect.stringContaining('2 rows')]);
  });
});

const root = process.getuid?.() === 0;

describe('a place that cannot be written to', () => {
  const bad = 'file.txt';
  beforeEach(() => writeFileSync(join(cwd, bad), ''));

  // Each ended with "something went wrong inside the tool itself" and a stack.
  it.each([
    [`classify weld.csv --json --out runs --overwrite`],
    [`report weld.csv runs/weld.csv --out ${bad}/x.html`],
    [`classify weld.csv runs/weld.csv --report x.html`],
    [`label weld.csv --out ${bad}/t.csv`],
    [`label weld.csv --out t.csv --clips ${bad}`],
    [`label weld.csv --out t.csv --tracks ${bad}`],
    [`simulate ${bad}/x --seconds 0.5 --no-sound`],
    [`simulate runs/deep/x --seconds 0.5 --no-sound`],
    [`fit --recipe small --out ${bad}`],
    [`page --out ${bad}`],
    [`watch weld.csv --speed max --welds ${bad}`],
  ])('%s is said in words', async (line) => {
    // A file where a folder is to be made.
    writeFileSync(join(cwd, 'x-runs'), '');
    writeFileSync(join(cwd, 'runs/deep'), '');
    const run = await runCli(line.split(' '), { cwd });
    expect(run.stderr).not.toMatch(/something went wrong|\n {4}at /);
    expect(run.stderr).toMatch(/\[(cannot-write|file-exists)\]/);
    expect(run.status).toBeGreaterThan(0);
  });

  it.skipIf(root)('a folder without the right to write is said in words', async () => {
    chmodSync(join(cwd, 'runs'), 0o555);
    const run = await runCli(['simulate', 'runs/x', '--no-sound', '--seconds', '0.5'], { cwd });
    expect(run.stderr).toMatch(/\[cannot-write\]/);
  });
});
