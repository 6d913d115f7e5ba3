import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readPeople } from '../../../../../src/apps/cli/report/people.js';

const folder = mkdtempSync(join(tmpdir(), 'people-'));

function table(name: string, ...rows: string[]): string {
  const path = join(folder, name);
  writeFileSync(path, `${['file,name,day', ...rows].join('\n')}\n`);
  return path;
}

// Rejects a join by the bare name, which gives the runs of one person to the other.
it('keeps files of one name in two folders apart', async () => {
  const path = table('two.csv', 'anna/r1.csv,anna,2026-03-02', 'ben/r1.csv,ben,2026-03-03');
  const personOf = await readPeople(path);
  expect(personOf(join(folder, 'anna', 'r1.csv'))?.name).toBe('anna');
  expect(personOf(join(folder, 'ben', 'r1.csv'))?.name).toBe('ben');
  expect(personOf(join(folder, 'cleo', 'r1.csv'))).toBeUndefined();
});

it('takes a bare name wherever the file lies', async () => {
  const personOf = await readPeople(table('bare.csv', 'r1.csv,anna,2026-03-02'));
  expect(personOf(join(folder, 'deep', 'r1.csv'))?.name).toBe('anna');
});

// Rejects taking the last of two rows without a word.
it('refuses a file that stands in the table twice', async () => {
  const path = table('twice.csv', 'r1.csv,anna,2026-03-02', 'r1.csv,ben,2026-03-02');
  await expect(readPeople(path)).rejects.toThrow(/line 3: r1\.csv stands in it twice/u);
});
