import {
  appendFileSync,
  existsSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Journal } from '../../../../src/apps/label/journal.js';
import { lockJournal } from '../../../../src/apps/label/journal-lock.js';
import { scratch } from '../../../support/scratch.js';

const line = (path: string, more: object = {}): string =>
  JSON.stringify({ path, fingerprint: 'f', key: null, result: null, ...more });

async function written(lines: string[]): Promise<string> {
  const path = join(scratch(), 'j');
  const journal = await Journal.open(path, false);
  for (const one of lines) await journal.append(one);
  await journal.close();
  return path;
}

describe('Journal', () => {
  it('gives back what was appended, the newest of each input', async () => {
    const path = await written([line('a', { n: 1 }), line('ü', { n: 2 }), line('a', { n: 3 })]);
    const journal = await Journal.open(path, false);
    expect([...journal.remembered.keys()]).toEqual(['a', 'ü']);
    expect(await journal.read(journal.remembered.get('a')!.place)).toMatchObject({ n: 3 });
    // Places are bytes: rejects one that counts letters.
    expect(await journal.read(journal.remembered.get('ü')!.place)).toMatchObject({ n: 2 });
    await journal.close();
  });

  it('goes on after a cut anywhere without losing a complete line or joining two', async () => {
    const path = await written([line('a'), line('ö'), line('c')]);
    const bytes = readFileSync(path);
    const ends = [...bytes.entries()].filter(([, byte]) => byte === 10).map(([at]) => at + 1);
    // Every seventh byte, and each side of every line break and of the two bytes of ö.
    const letter = bytes.indexOf('ö');
    const edges = [...ends, letter + 1].flatMap((at) => [at - 1, at, at + 1]);
    const steps = Array.from({ length: Math.floor(bytes.length / 7) }, (_, i) => i * 7);
    for (const cut of [...steps, ...edges].filter((at) => at <= bytes.length)) {
      writeFileSync(path, bytes.subarray(0, cut));
      const journal = await Journal.open(path, false);
      await journal.append(line('new'));
      await journal.close();
      const again = await Journal.open(path, false);
      const complete = Math.max(0, ends.filter((end) => end <= cut).length - 1);
      expect([...again.remembered.keys()]).toEqual([...['a', 'ö', 'c'].slice(0, complete), 'new']);
      await again.close();
    }
  });

  it('passes over a damaged line', async () => {
    const path = await written([line('a')]);
    appendFileSync(path, `{"path":"b",,\n${line('c')}\n`);
    const journal = await Journal.open(path, false);
    expect([...journal.remembered.keys()]).toEqual(['a', 'c']);
    await journal.close();
  });

  it('reads lines longer than a piece of reading', async () => {
    // Pieces are of 1 MiB: rejects one that loses what straddles two.
    const path = await written([line('a', { long: 'x'.repeat(1_500_000) }), line('b')]);
    const journal = await Journal.open(path, false);
    expect([...journal.remembered.keys()]).toEqual(['a', 'b']);
    await journal.close();
  });

  it('never touches a file that is something else', async () => {
    for (const content of ['my notes\n', 'my notes without an end']) {
      const path = join(scratch({ j: content }), 'j');
      await expect(Journal.open(path, false)).rejects.toMatchObject({ code: 'not-a-journal' });
      await expect(Journal.open(path, true)).rejects.toMatchObject({ code: 'not-a-journal' });
      expect(readFileSync(path, 'utf8')).toBe(content);
    }
  });

  it('forgets all when told to begin afresh', async () => {
    const path = await written([line('a')]);
    const journal = await Journal.open(path, true);
    expect(journal.remembered.size).toBe(0);
    await journal.close();
    truncateSync(path, statSync(path).size);
    expect(readFileSync(path, 'utf8')).not.toContain('"a"');
  });
});

describe('lockJournal', () => {
  it('keeps a second run out until it is released', async () => {
    const journal = join(scratch(), 'j');
    // The owner is a living process other than this one, as a second run would be.
    writeFileSync(
      `${journal}.lock`,
      JSON.stringify({ pid: process.ppid, host: (await import('node:os')).hostname() }),
    );
    await expect(lockJournal(journal)).rejects.toMatchObject({ code: 'journal-in-use' });
  });

  it('takes over from a process that is no more, and gives the lock back', async () => {
    const { hostname } = await import('node:os');
    const journal = join(scratch(), 'j');
    // Above the largest process number of Linux (4194304).
    writeFileSync(`${journal}.lock`, JSON.stringify({ pid: 2 ** 30, host: hostname() }));
    const lock = await lockJournal(journal);
    expect(JSON.parse(readFileSync(`${journal}.lock`, 'utf8')).pid).toBe(process.pid);
    await lock.release();
    expect(existsSync(`${journal}.lock`)).toBe(false);
  });

  it('does not take over from another host, which cannot be asked', async () => {
    const journal = join(scratch(), 'j');
    writeFileSync(`${journal}.lock`, JSON.stringify({ pid: 1, host: 'elsewhere.invalid' }));
    await expect(lockJournal(journal)).rejects.toMatchObject({ code: 'journal-in-use' });
  });
});
