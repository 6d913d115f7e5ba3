import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Result, resultSchema } from '../../src/analysis/result/index.js';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const program = join(import.meta.dirname, '../../bin/arc-transfer.js');
const missing = (count: number): string[] =>
  Array.from({ length: count }, (_, i) => `missing-${i}.wav`);

describe('help', () => {
  it('opens with examples, on stdout, with status 0', async () => {
    for (const args of [['--help'], ['classify', '--help'], ['help', 'classify']]) {
      const run = await runCli(args);
      expect(run.stdout).toMatch(/^Examples\n/);
      expect([run.status, run.stderr]).toEqual([0, '']);
    }
  });

  it('is there for every command, and opens with examples', async () => {
    // Rejects two options of one command with the same name, which only shows when it is loaded.
    const { stdout } = await runCli(['--help']);
    const list = stdout.slice(stdout.indexOf('Commands:')).matchAll(/^ {2}([a-z]+)/gm);
    const names = [...list].map((one) => one[1] ?? '').filter((name) => name !== 'help');
    expect(names).toContain('classify');
    for (const name of names) {
      const run = await runCli([name, '--help']);
      expect([name, run.status, run.stdout.split('\n')[0]]).toEqual([name, 0, 'Examples']);
    }
  });

  it('gives an example to each of the three users', async () => {
    const { stdout } = await runCli(['--help']);
    expect(stdout).toMatch(/trainer[\s\S]*robot cell[\s\S]*researcher/);
  });
});

describe('wrong use', () => {
  // Nothing on stdout: a script that reads it must not take help for data.
  it.each([
    [[], /Usage/],
    [['clasify', 'a.wav'], /Did you mean classify/],
    [['classify'], /missing required argument/],
    [['classify', 'a.wav', '--set-voltag', '20'], /Did you mean --set-voltage/],
    [['classify', 'a.wav', '--set-voltage'], /argument missing/],
    [['classify', 'a.wav', '--answer-threshold', '60'], /0\.3 to 0\.999/],
    [['classify', 'a.wav', '--gas', 'Ar+18XX'], /Ar\+18XX/],
    [['classify', 'a.wav', '--fail-on', 'unsrue'], /Did you mean "unsure"/],
    [['classify', 'a.wav', '--json', '--csv'], /cannot be used with/],
    [['classify', '-', '-'], /more than once/],
    [['classify', 'a.wav', '--out', 'no/such/folder/x.json'], /cannot be written/],
  ])('%j ends with 2 and says why on stderr', async (args, words) => {
    const run = await runCli(args);
    expect(run.stderr).toMatch(words);
    expect([run.status, run.stdout]).toEqual([2, '']);
  });
});

describe('inputs that cannot be read', () => {
  it('are results with status failed; the exit status is 1', async () => {
    const folder = scratch({ 'empty.wav': '', 'text.wav': 'Dear diary, today I welded.\n' });
    const run = await runCli(['classify', 'none.wav', 'empty.wav', 'text.wav', '--json'], {
      cwd: folder,
    });
    const results = run.stdout
      .trimEnd()
      .split('\n')
      .map((line) => resultSchema.parse(JSON.parse(line)));
    expect(results.map((one) => [one.source.path, one.status, one.error?.code])).toEqual([
      ['none.wav', 'failed', 'file-not-found'],
      ['empty.wav', 'failed', 'empty-file'],
      ['text.wav', 'failed', 'not-a-table'],
    ]);
    expect(run.status).toBe(1);
  });

  it('are said in words too, with what to do', async () => {
    const run = await runCli(['classify', 'none.wav']);
    expect(run.stdout).toContain('FAILED');
    expect(run.stdout).toContain('does not exist');
    expect(run.status).toBe(1);
  });

  it('come from stdin as well', async () => {
    const run = await runCli(['classify', '-', '--json'], { stdin: 'no recording at all' });
    const result = JSON.parse(run.stdout) as Result;
    expect([result.status, result.source.path]).toEqual(['failed', '-']);
    expect(result.error?.message).toContain('stdin');
  });
});

describe('pipes', () => {
  it('get every byte, however much it is', async () => {
    // A forced exit cuts piped output after 64 to 128 KiB; these are some 300 KiB.
    const run = await runCli(['classify', ...missing(400), '--json']);
    expect(run.stdout.length).toBeGreaterThan(250_000);
    expect(run.stdout.trimEnd().split('\n')).toHaveLength(400);
  });

  it('may be closed early without a stack trace', async () => {
    const child = spawn(process.execPath, [program, 'classify', ...missing(400), '--json']);
    let words = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      words += text;
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const status = await new Promise((resolve) => child.on('close', resolve));
    expect(words).not.toMatch(/EPIPE|at .*\.js/);
    expect(status).toBe(1);
  });

  it('get no colour', async () => {
    const run = await runCli(['classify', 'none.wav'], { env: { FORCE_COLOR: '1' } });
    expect(run.stdout).not.toContain('\u001b');
  });
});

describe('schema', () => {
  it('is the published JSON Schema', async () => {
    const run = await runCli(['schema']);
    const schema = JSON.parse(run.stdout) as { $schema: string; required: string[] };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.required).toEqual(expect.arrayContaining(['status', 'mode', 'confidence']));
    expect(run.status).toBe(0);
  });
});
