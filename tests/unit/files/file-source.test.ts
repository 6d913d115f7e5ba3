import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isArcError } from '../../../src/core/index.js';
import { SHARING_ACCESS, WAITING_ACCESS } from '../../../src/files/file-access.js';
import { openFileSource } from '../../../src/files/file-source.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'arc-source-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const codeOf = (run: Promise<unknown>) =>
  run.then(
    () => 'no error',
    (error: unknown) => (isArcError(error) ? error.code : `not ours: ${error}`),
  );

describe.each([
  ['beside other work', SHARING_ACCESS],
  ['in a thread of its own', WAITING_ACCESS],
])('a file as a source of bytes, read %s', (_, access) => {
  const file = (name: string, bytes: readonly number[]) => {
    const path = join(folder, name);
    writeFileSync(path, Uint8Array.from(bytes));
    return path;
  };

  it('gives any part, and what there is of a part beyond the end', async () => {
    const source = await openFileSource(file('a', [1, 2, 3, 4, 5]), access);
    expect(source.size).toBe(5);
    expect([...(await source.read(1, 3))]).toEqual([2, 3, 4]);
    expect([...(await source.read(3, 10))]).toEqual([4, 5]);
    expect([...(await source.read(9, 2))]).toEqual([]);
    await source.close();
  });

  it('says alike what is no file to read', async () => {
    expect(await codeOf(openFileSource(join(folder, 'none'), access))).toBe('file-not-found');
    expect(await codeOf(openFileSource(folder, access))).toBe('is-directory');
    execFileSync('mkfifo', [join(folder, 'pipe')]);
    expect(await codeOf(openFileSource(join(folder, 'pipe'), access))).toBe('not-a-file');
  });

  it('says when the file became shorter', async () => {
    const path = file('a', [1, 2, 3, 4, 5]);
    const source = await openFileSource(path, access);
    truncateSync(path, 2);
    expect(await source.currentSize?.()).toBe(2);
    expect(await codeOf(source.read(0, 5))).toBe('file-shrank');
    await source.close();
  });

  // Turns down a second close that closes whoever was given the same number meanwhile.
  it('may be closed twice without harm to a file opened in between', async () => {
    const first = await openFileSource(file('a', [1]), access);
    await first.close();
    const second = await openFileSource(file('b', [2]), access);
    await first.close();
    expect([...(await second.read(0, 1))]).toEqual([2]);
    await second.close();
  });
});
