import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { resultSchema } from '../../../src/analysis/result/index.js';
import { runCli } from '../../support/run-cli.js';

const root = join(import.meta.dirname, '../../..');
const demo = (name: string): string => join(root, 'fixtures/recordings', name);
const program = join(root, 'bin/arc-transfer.js');

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'arc-watch-cli-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const events = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));

describe('arc-transfer watch', () => {
  it('gives from a pipe the weld that classify finds in the file, whole and valid', async () => {
    const stdin = await readFile(demo('short-circuit.wav'));
    const [live, file] = await Promise.all([
      runCli(['watch', '-', '--json', '--welds', folder], { stdin }),
      // Of a stream nobody has said that somebody welded.
      runCli(['classify', demo('short-circuit.wav'), '--json', '--arc-prior', '0.5']),
    ]);
    expect(live.status).toBe(0);
    const welds = events(live.stdout).filter((one) => one.event === 'weld');
    const whole = JSON.parse(file.stdout);
    expect(welds.flatMap((one) => one.result.segments)).toEqual(whole.segments);
    expect(welds[0].mode).toBe(whole.mode);
    expect(await readdir(folder)).toEqual(['weld-000001.json']);
    const written = JSON.parse(await readFile(join(folder, 'weld-000001.json'), 'utf8'));
    expect(resultSchema.parse(written)).toEqual(welds[0].result);
  });

  it('raises the alarm by words, by a program without a shell, and by the exit status', async () => {
    const script =
      'require("fs").appendFileSync(process.argv[1], process.argv.slice(2).join(" ") + "\\n")';
    const out = join(folder, 'alarms $(id).txt');
    const args = ['-e', script, out, '{state}', '{expected}', '{mode}'].map(
      (word) => `--on-alarm-arg=${word}`,
    );
    const run = await runCli([
      ...['watch', demo('spray.csv'), '--speed', 'max', '--expect', 'short-circuit'],
      ...['--on-alarm', process.execPath, ...args],
    ]);
    expect(run.status).toBe(1);
    expect(run.stdout).toContain('! ALARM: spray instead of short-circuit');
    expect(run.stderr).toContain('no safety function');
    expect((await readFile(out, 'utf8')).trim().split('\n').sort()).toEqual([
      'alarm short-circuit spray',
      'alarm-end short-circuit spray',
    ]);
  });

  it('is quiet where the mode is the expected one', async () => {
    const run = await runCli([
      'watch',
      demo('short-circuit.csv'),
      '--speed',
      'max',
      '--expect',
      'short-circuit',
    ]);
    expect(run.status).toBe(0);
    expect(run.stdout).not.toContain('ALARM');
  });

  // Rejects documents that are written in place, and numbers that begin anew over what is there.
  it('leaves only whole welds when it is killed, and goes on after them', async () => {
    const rows = await readFile(demo('short-circuit.csv'), 'utf8');
    const child = spawn(process.execPath, [program, 'watch', '-', '--welds', folder, '--json']);
    child.stdin.on('error', () => {});
    const twoWelds = new Promise<void>((resolve) => {
      let text = '';
      child.stdout.on('data', (data) => {
        text += data;
        if ((text.match(/"event":"weld"/g) ?? []).length >= 2) resolve();
      });
    });
    const [head, ...lines] = rows.trim().split('\n');
    child.stdin.write(`${head}\n`);
    for (let weld = 0; weld < 3; weld++)
      for (const line of lines) {
        const [time, ...rest] = line.split(',');
        child.stdin.write(`${(Number(time) + 8 * weld).toFixed(5)},${rest.join(',')}\n`);
      }
    await twoWelds;
    child.kill('SIGKILL');
    await new Promise((resolve) => child.once('close', resolve));
    const names = (await readdir(folder)).filter((name) => /^weld-/.test(name)).sort();
    expect(names.length).toBeGreaterThanOrEqual(2);
    for (const name of names)
      resultSchema.parse(JSON.parse(await readFile(join(folder, name), 'utf8')));
    const next = await runCli(['watch', demo('spray.csv'), '--speed', 'max', '--welds', folder]);
    expect(next.stdout).toContain(`weld ${names.length + 1}:`);
  });

  it('ends cleanly on a stop, with the weld that burns kept as an open one', async () => {
    const child = spawn(process.execPath, [
      program,
      'watch',
      demo('spray.csv'),
      '--json',
      '--speed',
      '4',
    ]);
    let text = '';
    let asked = false;
    child.stdout.on('data', (data) => {
      text += data;
      // A second signal would end it by force.
      if (!asked && text.includes('"event":"mode"')) asked = child.kill('SIGINT');
    });
    const status = await new Promise((resolve) => child.once('close', resolve));
    expect(status).toBe(0);
    const weld = events(text).find((one) => one.event === 'weld');
    expect(weld.result.arcStretches[0].openEnd).toBe(true);
    expect(events(text).at(-1).event).toBe('end');
  });

  // Rejects one that takes silence of the line for a departure, or for the end of the arc.
  it('tells a lost signal apart from a departure, and goes on when it is back', async () => {
    const lines = (await readFile(demo('short-circuit.csv'), 'utf8')).split('\n');
    const args = ['watch', '-', '--json', '--expect', 'short-circuit', '--lost-after', '0.3s'];
    const child = spawn(process.execPath, [program, ...args]);
    let text = '';
    child.stdout.on('data', (data) => {
      text += data;
    });
    const half = Math.floor(lines.length / 2);
    child.stdin.write(`${lines.slice(0, half).join('\n')}\n`);
    while (!text.includes('signal-lost')) await new Promise((resolve) => setTimeout(resolve, 50));
    child.stdin.end(lines.slice(half).join('\n'));
    await new Promise((resolve) => child.once('close', resolve));
    const kinds = events(text).map((one) => one.event);
    expect(kinds).toContain('signal-back');
    expect(kinds).not.toContain('alarm');
    expect(kinds.filter((one) => one === 'arc-start' || one === 'weld')).toEqual([
      'arc-start',
      'weld',
    ]);
  });

  it('obeys what the stream says is expected', async () => {
    const rows = await readFile(demo('spray.csv'), 'utf8');
    const at = rows.indexOf('\n') + 1;
    const stdin = `${rows.slice(0, at)}#program 2\n${rows.slice(at)}`;
    const run = await runCli(['watch', '-', '--programs', '1=spray,2=globular'], { stdin });
    expect(run.stdout).toContain('expected from here on: globular (program 2)');
    expect(run.stdout).toContain('! ALARM: spray instead of globular');
    expect(run.status).toBe(1);
  });

  it.each([
    [['watch'], 'no-source'],
    [['watch', '-', '--speed', '2'], 'useless-option'],
    [['watch', 'tcp://x'], 'bad-address'],
    [
      ['watch', '-', '--tolerate', '2s', '--alarm-after', '1s', '--expect', 'spray'],
      'bad-alarm-after',
    ],
    [['watch', '-', '--on-alarm', 'true'], 'nothing-expected'],
    [['watch', '-', '--tack', 'soon'], 'bad-tack'],
    [['watch', '-', '--programs', '1=sprey'], 'bad-expect'],
  ])('refuses %j as wrong use', async (args, code) => {
    const run = await runCli(args);
    expect(run.status).toBe(2);
    expect(run.stderr).toContain(`[${code}]`);
  });
});

describe('a lack of arc or of rows', () => {
  it('is said, and raises the alarm where that is asked for', async () => {
    // Half a minute in which nothing burns.
    const quiet = Array.from({ length: 30_000 }, (_, i) => `${(i / 1000).toFixed(3)},0.1,0.5`);
    const run = await runCli(
      ['watch', '-', '--json', '--arc-missing-after', '10', '--alarm-also', 'no-arc'],
      { stdin: `time_s,voltage_v,current_a\n${quiet.join('\n')}\n` },
    );
    const found = events(run.stdout).filter((one) => one.event === 'no-arc');
    expect(found).toHaveLength(1);
    expect(found[0].timeS).toBeGreaterThanOrEqual(10);
    expect([run.status, events(run.stdout).at(-1).alarms]).toEqual([1, 1]);
  });

  it('is said where bytes come that nobody can read', async () => {
    const server = createServer((socket) => {
      socket.on('error', () => {});
      const timer = setInterval(() => socket.write('\x80\x07~noise\r'), 100);
      socket.on('close', () => clearInterval(timer));
    });
    server.listen(0, '127.0.0.1');
    await once(server, 'listening');
    const { port } = server.address() as { port: number };
    const args = ['watch', `tcp://127.0.0.1:${port}`, '--json', '--alarm-also', 'unreadable'];
    const child = spawn(process.execPath, [program, ...args]);
    let out = '';
    child.stdout.on('data', (data) => {
      out += data;
      if (!child.killed && out.includes('"unreadable"')) child.kill('SIGINT');
    });
    const [status] = await once(child, 'close');
    server.close();
    expect(events(out).filter((one) => one.event === 'unreadable')).toMatchObject([
      { why: expect.stringContaining('none could be read') },
    ]);
    expect(status).toBe(1);
  });
});

describe('before anything is listened to', () => {
  // Was said at the first alarm only, when the weld was over.
  it.each(['no-such-program', './no/such/script.sh', root])(
    'refuses %s as the program of the alarm',
    async (name) => {
      const args = ['watch', '-', '--expect', 'spray', '--on-alarm', name];
      const run = await runCli(args, { stdin: '' });
      expect([run.status, run.stderr]).toEqual([2, expect.stringContaining('[no-alarm-program]')]);
    },
  );

  it('says that the signal is back only where it was said to be lost', async () => {
    const row = (i: number) => `${(i / 1000).toFixed(3)},0.1,0.5\n`;
    const rows = (from: number, to: number) =>
      Array.from({ length: to - from }, (_, i) => row(from + i)).join('');
    const stdin = `time_s,voltage_v,current_a\n${rows(0, 1000)}${rows(3000, 4000)}`;
    const run = await runCli(['watch', '-', '--json'], { stdin });
    const kinds = events(run.stdout).map((one) => one.event);
    expect(kinds.filter((kind) => /gap|signal/.test(kind))).toEqual(['gap']);
  });
});
