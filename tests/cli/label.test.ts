import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { runLabel } from '../support/run-label.js';
import { scratch } from '../support/scratch.js';

/** Twenty inputs of many lengths, so that later ones are done before earlier ones. */
function recordings(changes: Record<string, string> = {}): Record<string, string> {
  const text = (i: number): string =>
    i === 5 ? 'doubt' : `arc ${i === 9 ? 'no-arc' : 'ok'} ${(i * 7) % 20}`;
  return {
    ...Object.fromEntries(Array.from({ length: 20 }, (_, i) => [`recs/r${i + 10}.wav`, text(i)])),
    ...changes,
  };
}

const inline = { LABEL_INLINE: '1' };
const bytes = (path: string): string => readFileSync(path, 'latin1');

describe('label', () => {
  it('writes the same bytes for one thread and for several, in every format', async () => {
    const cwd = scratch(recordings({ 'recs/notes.txt': 'hello' }));
    for (const format of ['csv', 'tsv', 'ndjson', 'parquet']) {
      for (const workers of ['1', '3']) {
        const options = {
          out: `w${workers}.${format}`,
          workers,
          rows: format === 'tsv' ? 'segments' : 'runs',
        };
        // The journal of the first format serves the others: only tables are written anew.
        if (format !== 'csv')
          copyFileSync(join(cwd, `w${workers}.csv.journal`), join(cwd, `${options.out}.journal`));
        expect((await runLabel({ inputs: ['recs'], options, cwd })).status).toBe(0);
      }
      expect(bytes(join(cwd, `w1.${format}`))).toBe(bytes(join(cwd, `w3.${format}`)));
    }
    // The one worker finishes in order, three do not: rejects rows in order of completion.
    const files = bytes(join(cwd, 'w3.csv'))
      .split('\r\n')
      .slice(1, -1)
      .map((line) => line.split(',')[0]);
    expect(files).toEqual(Object.keys(recordings()));
  });

  it('gives a thread that ends and a broken file a row each, and leaves the others byte for byte', async () => {
    const cwd = scratch(recordings());
    const options = { out: 'a.csv', workers: '2' };
    await runLabel({ inputs: ['recs'], options, cwd });
    writeFileSync(join(cwd, 'recs/r13.wav'), 'broken');
    writeFileSync(join(cwd, 'recs/r17.wav'), 'crash');
    const { status, words } = await runLabel({
      inputs: ['recs'],
      options: { ...options, out: 'b.csv' },
      cwd,
    });
    expect(status).toBe(1);
    expect(words).toContain('Failed (2):');
    const [a, b] = ['a.csv', 'b.csv'].map((name) => bytes(join(cwd, name)).split('\r\n'));
    const changed = a!.flatMap((line, at) => (line === b![at] ? [] : [at]));
    expect(a!.length).toBe(b!.length);
    expect(changed).toEqual([4, 8]); // r13 and r17, after the heading
    expect(b![4]).toMatch(/^recs\/r13\.wav,failed,.*,bad-content,/);
    expect(b![8]).toMatch(/^recs\/r17\.wav,failed,.*,worker-died,/);
  });

  it('labels again what changed, and nothing else', async () => {
    const cwd = scratch({ ...recordings(), log: '' });
    const log = join(cwd, 'log');
    const run = async (more: object = {}, env: object = {}) => {
      writeFileSync(log, '');
      const options = { out: 't.csv', resume: true, ...more };
      const ended = await runLabel({
        inputs: ['recs'],
        options,
        cwd,
        env: { ...inline, LABEL_ENGINE_LOG: log, ...env },
      });
      expect(ended.status).toBe(0);
      return readFileSync(log, 'utf8')
        .split('\n')
        .filter((line) => line !== '')
        .sort();
    };
    const all = Object.keys(recordings());
    expect(await run()).toEqual(all);
    expect(await run()).toEqual([]);
    // Another kind of table and a spreadsheet's CSV change no answer.
    expect(await run({ rows: 'segments' })).toEqual([]);
    expect(await run({ csvFor: 'excel' })).toEqual([]);
    writeFileSync(join(cwd, 'recs/r12.wav'), 'arc unsure');
    writeFileSync(join(cwd, 'recs/s.wav'), 'arc ok');
    expect(await run()).toEqual(['recs/r12.wav', 'recs/s.wav']);
    expect(bytes(join(cwd, 't.csv'))).toMatch(/\r\nrecs\/r12\.wav,unsure,/);
    rmSync(join(cwd, 'recs/s.wav'));
    expect(await run()).toEqual([]);
    expect(bytes(join(cwd, 't.csv'))).not.toContain('recs/s.wav');
    // Each of these could change every answer.
    for (const [more, env] of [
      [{ mixedShare: '0.8' }, {}],
      [{ gas: 'C1' }, {}],
      [{ sampleRate: '20000' }, {}],
      [{}, { LABEL_ENGINE_MODELS: 'another' }],
    ] as const)
      expect(await run(more, env)).toEqual(all);
    expect(await run({ overwrite: true, resume: undefined })).toEqual(all);
  });

  it('never writes over a table without being told, nor over a file that is no journal', async () => {
    const cwd = scratch({ 'a.wav': 'arc ok', 't.csv': 'mine', 'u.csv.journal': 'mine too' });
    const run = (out: string, more: object = {}) =>
      runLabel({ inputs: ['a.wav'], options: { out, ...more }, cwd, env: inline });
    const refused = await run('t.csv');
    expect([refused.status, refused.words]).toEqual([2, expect.stringContaining('[file-exists]')]);
    expect((await run('u.csv', { overwrite: true })).words).toContain('[not-a-journal]');
    expect([bytes(join(cwd, 't.csv')), bytes(join(cwd, 'u.csv.journal'))]).toEqual([
      'mine',
      'mine too',
    ]);
    expect(readdirSync(cwd).sort()).toEqual(['a.wav', 't.csv', 'u.csv.journal']);
    expect((await run('t.csv', { overwrite: true })).status).toBe(0);
    expect(bytes(join(cwd, 't.csv'))).toMatch(/^file,status/);
  });

  it('gives an input that vanished a row, and takes it up again when it is back', async () => {
    const cwd = scratch({ 'a.wav': 'arc ok', 'b.wav': 'arc ok' });
    const run = () =>
      runLabel({
        inputs: ['a.wav', 'b.wav'],
        options: { out: 't.csv', resume: true },
        cwd,
        env: inline,
      });
    await run();
    const whole = bytes(join(cwd, 't.csv'));
    rmSync(join(cwd, 'b.wav'));
    expect((await run()).status).toBe(1);
    expect(bytes(join(cwd, 't.csv'))).toMatch(/\r\nb\.wav,failed,.*,file-not-found,/);
    writeFileSync(join(cwd, 'b.wav'), 'arc ok');
    expect((await run()).status).toBe(0);
    expect(bytes(join(cwd, 't.csv'))).toBe(whole);
  });

  it('joins set-ups, and carries the user’s own columns', async () => {
    const cwd = scratch({
      ...recordings(),
      'setups.csv': 'file,volts_v,welder\nr10.wav,22,Kim\nrecs/r11.wav,,Lou\n',
    });
    const { words, status } = await runLabel({
      inputs: ['recs'],
      options: { out: 't.ndjson', setups: 'setups.csv', setVoltage: '30' },
      cwd,
      env: inline,
    });
    expect(status).toBe(0);
    expect(words).toContain('18 inputs have no row in setups.csv');
    const rows = bytes(join(cwd, 't.ndjson'))
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    // The invented engine gives the set voltage back as the mean. A row wins over the flag.
    expect(rows.slice(0, 3).map((row) => [row.mean_voltage_v, row.given_welder])).toEqual([
      [22, 'Kim'],
      [30, 'Lou'],
      [30, null],
    ]);
  });

  it('takes the parts of a shard as the whole', async () => {
    const cwd = scratch(recordings());
    const run = (out: string, more: object = {}) =>
      runLabel({ inputs: ['recs'], options: { out, ...more }, cwd, env: inline });
    await run('whole.ndjson');
    for (const part of [1, 2, 3]) await run(`part${part}.ndjson`, { shard: `${part}/3` });
    const parts = [1, 2, 3].map((part) => bytes(join(cwd, `part${part}.ndjson`)));
    expect(parts.join('')).toBe(bytes(join(cwd, 'whole.ndjson')));
  });

  it('reads paths from a pipe and writes rows into one, in order and like a table', async () => {
    const cwd = scratch(recordings());
    const stdin = Object.keys(recordings()).reverse().join('\n');
    const piped = await runLabel({
      inputs: ['-'],
      options: { format: 'ndjson', workers: '2' },
      cwd,
      stdin,
    });
    expect(piped.status).toBe(0);
    await runLabel({ inputs: ['-'], options: { out: 't.ndjson' }, cwd, stdin, env: inline });
    expect(piped.out).toBe(bytes(join(cwd, 't.ndjson')));
    expect(
      piped.out
        .split('\n')
        .slice(0, 2)
        .map((line) => JSON.parse(line).file),
    ).toEqual(['recs/r29.wav', 'recs/r28.wav']);
  });

  it('cuts what is in doubt, and keeps what a person wrote into the list', async () => {
    const cwd = scratch(recordings());
    const run = () =>
      runLabel({
        inputs: ['recs'],
        options: { out: 't.csv', resume: true, clips: 'clips', tracks: 'tracks' },
        cwd,
        env: inline,
      });
    await run();
    const clips = readdirSync(join(cwd, 'clips')).filter((name) => name.endsWith('.wav'));
    expect(clips).toHaveLength(1);
    // 6 s to 9 s at 8 kHz in 24 bits, and a heading of 44 bytes.
    expect(statSync(join(cwd, 'clips', clips[0]!)).size).toBe(3 * 8000 * 3 + 44);
    const list = join(cwd, 'clips/labels.csv');
    const filled = bytes(list).replace(/,,,,\r\n$/, ',globular+spray,Kim,,"said ""both"""\r\n');
    expect(filled).not.toBe(bytes(list));
    writeFileSync(list, filled, 'latin1');
    writeFileSync(join(cwd, 'recs/z.wav'), 'doubt');
    const track = join(cwd, 'tracks/recs__r10.wav.tsv');
    expect(bytes(track)).toBe('1.000000\t6.000000\tspray\n6.000000\t9.000000\tglobular\n');
    writeFileSync(track, '1\t9\tspray\n');
    const { words } = await run();
    expect(words).toContain('1 clips added, 1 were there');
    expect(words).toContain('1 that say something else were left');
    expect(bytes(list).startsWith(filled)).toBe(true);
    expect(bytes(list).slice(filled.length)).toMatch(/^z-[^\r]*recs\/z\.wav[^\r]*\r\n$/);
    expect(bytes(track)).toBe('1\t9\tspray\n');
  });

  it('stops at a signal, says so, and goes on afterwards', async () => {
    const cwd = scratch({ ...recordings(), 'recs/a.wav': 'arc ok 800' });
    const { startLabel } = await import('../support/run-label.js');
    const options = { out: 't.csv', resume: true };
    const log = join(cwd, 'log');
    writeFileSync(log, '');
    const { child, ended } = startLabel({
      inputs: ['recs'],
      options,
      cwd,
      env: { ...inline, LABEL_ENGINE_LOG: log },
    });
    while (statSync(log).size === 0) await new Promise((resolve) => setTimeout(resolve, 5));
    child.kill('SIGTERM');
    const stopped = await ended;
    expect([stopped.status, stopped.words]).toEqual([
      1,
      expect.stringMatching(/Stopped: \d+ of 21/),
    ]);
    expect(existsSync(join(cwd, 't.csv'))).toBe(false);
    expect((await runLabel({ inputs: ['recs'], options, cwd, env: inline })).status).toBe(0);
  });
});

describe('label on a bad disk', () => {
  /** A file system of its own; the test is left out where this user may not mount one. */
  const small = (size: string): string | undefined => {
    const folder = join(scratch(), 'disk');
    mkdirSync(folder);
    const made = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${size}`, 'tmpfs', folder]);
    if (made.status !== 0) return undefined;
    onTestFinished(() => void spawnSync('umount', ['-l', folder]));
    return folder;
  };

  it('says that the disk is full, keeps the journal, and goes on when there is room', async (test) => {
    const disk = small('24k');
    if (disk === undefined) return test.skip('mounting a small disk is not permitted here');
    const cwd = scratch(recordings());
    const run = (out: string) =>
      runLabel({ inputs: ['recs'], options: { out, resume: true }, cwd, env: inline });
    const out = join(disk, 't.csv');
    const full = await run(out);
    expect([full.status, full.words]).toEqual([1, expect.stringContaining('[disk-full]')]);
    // Nothing half: every line of the journal is complete, and there is no table.
    const lines = bytes(`${out}.journal`).split('\n');
    expect(lines.pop()).toBe('');
    for (const line of lines) JSON.parse(line);
    expect(lines.length).toBeGreaterThan(2);
    expect(readdirSync(disk)).toEqual(['t.csv.journal']);
    expect(spawnSync('mount', ['-o', 'remount,size=1m', disk]).status).toBe(0);
    const again = await run(out);
    expect([again.status, again.words]).toEqual([
      0,
      expect.stringContaining(`${lines.length - 1} of them labelled earlier`),
    ]);
    await run('elsewhere.csv');
    expect(bytes(out)).toBe(bytes(join(cwd, 'elsewhere.csv')));
  });

  it('says so where it may not write', async (test) => {
    const cwd = scratch({ 'a.wav': 'arc ok', 'shut/x': '' });
    chmodSync(cwd, 0o755);
    chmodSync(join(cwd, 'shut'), 0o555);
    // The one who may write everywhere becomes another.
    const uid = process.getuid?.() === 0 ? 65_534 : undefined;
    if (process.getuid === undefined) return test.skip('no users here');
    const run = (out: string) =>
      runLabel({ inputs: ['a.wav'], options: { out }, cwd, env: inline, ...(uid ? { uid } : {}) });
    for (const out of ['shut/t.csv', 'gone/t.csv']) {
      const { status, words } = await run(out);
      expect([status, words]).toEqual([2, expect.stringContaining('[cannot-write]')]);
    }
    expect(readdirSync(join(cwd, 'shut'))).toEqual(['x']);
  });
});
