import { copyFileSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const recording = (name: string): string => resolve('fixtures/recordings', name);

function classFolder(): string {
  const folder = scratch({ 'class/.keep': '' });
  const put = (from: string, name: string) =>
    copyFileSync(recording(from), join(folder, 'class', name));
  put('short-circuit.csv', 'anna_2026-03-02_1.csv');
  put('spray.csv', 'anna_2026-03-09_1.csv');
  return folder;
}

describe('report --progress', () => {
  it('puts names and days of file names into the index and a CSV, against a reference', async () => {
    const folder = classFolder();
    const out = join(folder, 'class.html');
    const run = await runCli([
      ...['report', join(folder, 'class'), '--out', out],
      ...['--progress', '{name}_{day}_*.csv', '--reference', recording('spray.csv')],
    ]);
    expect(run.status).toBe(0);
    const [head, ...rows] = readFileSync(join(folder, 'class-progress.csv'), 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.split(','));
    const cell = (row: string[], name: string) => row[head!.indexOf(name)];
    expect(rows.map((row) => row.slice(0, 3))).toEqual([
      ['anna', '2026-03-02', '1'],
      ['anna', '2026-03-09', '1'],
    ]);
    // The second run is the reference itself: nothing differs.
    expect(cell(rows[1]!, 'differing_figures')).toBe('0');
    expect(Number(cell(rows[0]!, 'differing_figures'))).toBeGreaterThan(0);
    const page = readFileSync(out, 'utf8');
    expect(page).toContain('Progress by name and day');
    expect(page).toContain('id="progress-picture-t"');
  }, 60_000);

  it('says which recordings neither name nor day is known of', async () => {
    const folder = classFolder();
    copyFileSync(recording('spray.csv'), join(folder, 'class', 'other.csv'));
    const run = await runCli([
      ...['report', join(folder, 'class'), '--out', join(folder, 'class.html')],
      ...['--progress', '{name}_{day}_*.csv'],
    ]);
    expect(run.status).toBe(0);
    expect(run.stderr).toMatch(/Not in the progress.*other\.csv/u);
    const rows = readFileSync(join(folder, 'class-progress.csv'), 'utf8').trim().split('\n');
    expect(rows).toHaveLength(3);
  }, 60_000);

  it('refuses a reference that cannot be judged', async () => {
    const folder = classFolder();
    const run = await runCli([
      ...['report', join(folder, 'class'), '--out', join(folder, 'x.html')],
      ...['--progress', '{name}_{day}_*.csv', '--reference', join(folder, 'missing.csv')],
    ]);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/missing\.csv could not be judged/u);
  });

  it('refuses a pattern that holds no day, one recording alone, and a reference without it', async () => {
    const folder = classFolder();
    const report = (...more: string[]) =>
      runCli(['report', ...more, '--out', join(folder, 'x.html')]);
    const both = join(folder, 'class');
    expect((await report(both, '--progress', '{name}.csv')).stderr).toMatch(/name and day/u);
    expect((await report(recording('spray.csv'), '--progress', '{name}_{day}')).status).toBe(2);
    expect((await report(both, '--reference', recording('spray.csv'))).status).toBe(2);
  });
});
