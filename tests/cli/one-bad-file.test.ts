import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { runLabel } from '../support/run-label.js';
import { scratch } from '../support/scratch.js';

const demo = (name: string): string => join(import.meta.dirname, '../../fixtures/recordings', name);

let cwd: string;
beforeEach(() => {
  cwd = scratch({ 'a.wav': 'arc ok', 'b.wav': 'arc ok' });
});

const rows = (name: string): string[] =>
  readFileSync(join(cwd, name), 'utf8').trim().split('\r\n').slice(1);

describe('one bad file costs one row', () => {
  it('of a sub-folder that may not be read', async () => {
    for (const name of ['sub', 'shut', 'shut/deep']) mkdirSync(join(cwd, name));
    writeFileSync(join(cwd, 'sub/c.wav'), 'arc ok');
    chmodSync(join(cwd, 'shut'), 0o000);
    chmodSync(cwd, 0o777);
    const uid = process.getuid?.() === 0 ? { uid: 65_534 } : {};
    const env = { LABEL_INLINE: '1' };
    const run = await runLabel({ inputs: ['.'], options: { out: 't.csv' }, cwd, env, ...uid });
    chmodSync(join(cwd, 'shut'), 0o755);
    expect(run.words).toContain('4 recordings: 3 with a mode, 0 no arc, 0 unsure, 1 failed');
    expect(rows('t.csv').map((row) => row.split(',').slice(0, 2))).toEqual([
      ['a.wav', 'ok'],
      ['b.wav', 'ok'],
      ['shut', 'failed'],
      ['sub/c.wav', 'ok'],
    ]);
    expect(run.words).toMatch(/shut: .*may not be read/);
    expect(run.status).toBe(1);
  });

  it('that takes too long', async () => {
    writeFileSync(join(cwd, 'slow.wav'), 'arc ok 600000');
    const options = { out: 't.csv', timeLimit: '3', workers: '2' };
    const run = await runLabel({ inputs: ['slow.wav', 'a.wav', 'b.wav'], options, cwd });
    expect(run.words).toContain('slow.wav was given up after 3 s');
    expect(rows('t.csv').map((row) => row.split(',')[1])).toEqual(['failed', 'ok', 'ok']);
  });

  it('with a name as long as a name may be, clips and tracks included', async () => {
    const name = `${'ü'.repeat(125)}.wav`;
    writeFileSync(join(cwd, name), 'doubt');
    const env = { LABEL_INLINE: '1' };
    const options = { out: 't.csv', clips: 'clips', tracks: 'tracks' };
    const run = await runLabel({ inputs: [name], options, cwd, env });
    expect([run.status, run.words]).toEqual([0, expect.stringContaining('clips added')]);
    expect(readdirSync(join(cwd, 'tracks'))).toHaveLength(1);
    expect(readdirSync(join(cwd, 'clips'))).toHaveLength(2);
  });

  it('that is a pipe nobody writes to', async () => {
    execFileSync('mkfifo', [join(cwd, 'pipe.wav')]);
    const env = { LABEL_INLINE: '1' };
    const options = { out: 't.csv' };
    const run = await runLabel({ inputs: ['pipe.wav', 'a.wav'], options, cwd, env });
    expect(rows('t.csv').map((row) => row.split(',')[1])).toEqual(['failed', 'ok']);
    expect(run.words).toMatch(/pipe\.wav is a pipe or device/);
  });
});

describe('own outputs', () => {
  it('in a folder are no recordings', async () => {
    mkdirSync(join(cwd, 'runs'));
    cpSync(demo('spray.csv'), join(cwd, 'runs/spray.csv'));
    for (const line of [
      'classify runs/spray.csv --csv --out runs/old.csv',
      'label runs/spray.csv --out runs/older.csv',
      'label runs/spray.csv --rows segments --out runs/segments.tsv',
      'label runs/spray.csv --rows windows --out runs/windows.parquet',
    ])
      expect([line, (await runCli(line.split(' '), { cwd })).status]).toEqual([line, 0]);
    const run = await runCli(['label', 'runs', '--out', 'all.csv'], { cwd });
    expect(run.stderr).toMatch(/1 recording: 1 with a mode, 0 no arc, 0 unsure, 0 failed/);
    expect(rows('all.csv')).toHaveLength(1);
  });
});

describe('names', () => {
  it('with control bytes never reach a terminal as they are', async () => {
    const name = 'a\x1b[31m\x07b\r.csv';
    copyFileSync(demo('spray.csv'), join(cwd, name));
    const bad = 'x\x1b]0;t\x07.csv';
    writeFileSync(join(cwd, bad), 'nothing');
    for (const args of [
      ['classify', name],
      ['classify', name, bad],
      ['classify', 'gone\x1b[2J.csv'],
      ['inspect', name],
      ['compare', name, name],
      ['label', bad, '--out', 't.csv', '--overwrite'],
      ['watch', name, '--speed', 'max'],
      ['watch', 'gone\x1b[2J.csv'],
    ]) {
      const run = await runCli(args, { cwd });
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
      expect([args, (run.stdout + run.stderr).match(/[\x00-\x08\x0b-\x1f\x7f]/g)]).toEqual([
        args,
        null,
      ]);
    }
  });
});
