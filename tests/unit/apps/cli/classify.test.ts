import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Result, resultSchema } from '../../../../src/analysis/result/index.js';
import { classifyCommand } from '../../../../src/apps/cli/classify/command.js';
import { FAKE_ENGINE } from '../../../support/fake-engine.js';
import { scratch } from '../../../support/scratch.js';

let words = '';
beforeEach(() => {
  words = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    words += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

const FILES = {
  'a.wav': 'arc ok',
  'b.csv': 'broken',
  'notes.txt': 'hello',
  'sub/c.wav': 'arc no-arc',
};

/** Runs the command into a file; gives its text and the exit status. */
async function run(folder: string, inputs: string[], options: Record<string, unknown> = {}) {
  const out = join(folder, '.out');
  process.exitCode = undefined;
  await classifyCommand(
    inputs.map((one) => join(folder, one)),
    { json: true, out, overwrite: true, ...options },
    FAKE_ENGINE,
  );
  return { text: readFileSync(out, 'utf8'), status: Number(process.exitCode ?? 0) };
}

const parse = (text: string): Result[] =>
  text
    .trimEnd()
    .split('\n')
    .map((line) => resultSchema.parse(JSON.parse(line)));

describe('classifyCommand', () => {
  it('gives one valid document a line in order, a failed one for a bad input, and goes on', async () => {
    const folder = scratch(FILES);
    const { text, status } = await run(folder, ['a.wav', 'b.csv', 'missing.wav', 'sub/c.wav']);
    expect(parse(text).map((one) => [one.status, one.error?.code ?? null])).toEqual([
      ['ok', null],
      ['failed', 'bad-content'],
      ['failed', 'file-not-found'],
      ['no-arc', null],
    ]);
    expect(status).toBe(1);
    expect(words).toContain('4 recordings: 1 with a mode, 1 no arc, 0 unsure, 2 failed');
  });

  it('takes every recording of a folder and says what it passed over', async () => {
    const folder = scratch({ ...FILES, '.hidden.wav': 'arc ok' });
    const { text } = await run(folder, ['']);
    const names = parse(text).map((one) => one.source.path.slice(folder.length + 1));
    expect(names).toEqual(['a.wav', 'b.csv', join('sub', 'c.wav')]);
    expect(words).toContain('1 not a recording, passed over');
  });

  it('fails a file named by itself that is no recording, unlike one found in a folder', async () => {
    const folder = scratch(FILES);
    const { text, status } = await run(folder, ['notes.txt']);
    expect((JSON.parse(text) as Result).error?.code).toBe('unknown-format');
    expect(status).toBe(1);
  });

  it('records the SHA-256 of the file', async () => {
    const folder = scratch(FILES);
    const { text } = await run(folder, ['a.wav', 'sub/c.wav']);
    const expected = createHash('sha256').update('arc ok').digest('hex');
    expect(parse(text)[0]?.source.sha256).toBe(expected);
  });

  it('fails where a folder holds files but no recording', async () => {
    const folder = scratch({ 'only/notes.txt': 'hello' });
    expect((await run(folder, ['only'])).status).toBe(1);
  });

  it.each([
    ['no-arc', 1],
    ['unsure,disagrees', 0],
    ['short-circuit', 1],
    ['spray', 0],
  ])('with --fail-on %s ends with status %i', async (failOn, expected) => {
    const folder = scratch({ 'a.wav': 'arc ok', 'c.wav': 'arc no-arc' });
    expect((await run(folder, ['a.wav', 'c.wav'], { failOn })).status).toBe(expected);
  });

  it('never replaces a file unless told, and leaves no half-written one', async () => {
    const folder = scratch({ 'a.wav': 'arc ok', '.out': 'mine' });
    await expect(run(folder, ['a.wav'], { overwrite: false })).rejects.toMatchObject({
      code: 'file-exists',
    });
    expect(readFileSync(join(folder, '.out'), 'utf8')).toBe('mine');
    await run(folder, ['a.wav']);
    expect(readdirSync(folder).sort()).toEqual(['.out', 'a.wav']);
  });

  it('writes a table with one row a run', async () => {
    const folder = scratch(FILES);
    const { text } = await run(folder, ['a.wav', 'b.csv'], { json: undefined, csvFor: 'any' });
    expect(text.trimEnd().split('\r\n')).toHaveLength(3);
  });

  it('says the cautions once for several runs, after the last', async () => {
    const folder = scratch({ 'a.wav': 'arc ok', 'c.wav': 'arc unsure' });
    const { text } = await run(folder, ['a.wav', 'c.wav'], { json: undefined });
    expect(text.match(/^Caution$/gm)).toHaveLength(1);
    expect(text.indexOf('Caution')).toBeGreaterThan(text.indexOf('UNSURE'));
  });

  it('checks the options before it reads or writes anything', async () => {
    const folder = scratch({ 'a.wav': 'arc ok' });
    const wrong = [
      { lookAhead: '99' },
      { failOn: 'nothing' },
      { gas: 'Ar+18XX' },
      { channel: 'x' },
    ];
    for (const options of wrong) {
      const out = join(folder, 'new.json');
      await expect(
        classifyCommand([join(folder, 'a.wav')], { out, ...options }, FAKE_ENGINE),
      ).rejects.toMatchObject({ name: 'ArcError' });
      expect(existsSync(out)).toBe(false);
    }
  });
});
