import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../support/run-cli.js';
import { scratch } from '../support/scratch.js';

const recordings = join(import.meta.dirname, '../../fixtures/recordings');
const TABLE = [
  'file,mode,group',
  `${join(recordings, 'short-circuit.csv')},short-circuit,trace`,
  `${join(recordings, 'pulsed-spray.csv')},pulsed-spray,trace`,
  'broken.wav,spray,trace',
  'lost.wav,spray,trace',
].join('\n');

interface Document {
  runs: Record<string, number>;
  confusion: { truths: string[]; answers: string[]; counts: number[][] };
  files: { file: string; answer: string; error: string | null }[];
}

describe('evaluate', () => {
  it('lets a bad file cost its own row only, and writes document and page', async () => {
    const folder = scratch({ 'truth.csv': TABLE, 'broken.wav': 'no recording' });
    const args = ['evaluate', 'truth.csv', '--json', '--out', 'page.html'];
    const run = await runCli(args, { cwd: folder });
    const { runs, files, confusion } = JSON.parse(run.stdout) as Document;
    // Rejects ending at the first file that cannot be read, leaving it out, and exit status 0.
    expect(run.status).toBe(1);
    expect(runs).toMatchObject({ labelled: 4, scored: 4, failed: 2 });
    expect(files.map((one) => one.answer === 'failed')).toEqual([false, false, true, true]);
    expect(files[3]!.error).toMatch(/does not exist/);
    const spray = confusion.counts[confusion.truths.indexOf('spray')]!;
    expect(spray[confusion.answers.indexOf('failed')]).toBe(2);
    const page = readFileSync(join(folder, 'page.html'), 'utf8');
    expect(page).toContain('Content-Security-Policy');
    expect(page).toContain('lost.wav');
    expect(page).not.toMatch(/<script|https?:\/\//);
  });

  it('refuses a wrong table before reading any recording', async () => {
    const folder = scratch({ 'truth.csv': 'file,mode\nlost.wav,sprey\n' });
    const wrong = await runCli(['evaluate', 'truth.csv'], { cwd: folder });
    expect([wrong.status, wrong.stdout]).toEqual([2, '']);
    expect(wrong.stderr).toMatch(/line 2.*"sprey".*Did you mean "spray"\?.*\[unknown-label\]/);
  });

  it('says the same by one thread and by three, in the order of the table', async () => {
    const folder = scratch({ 'truth.csv': TABLE, 'broken.wav': 'no recording' });
    const by = (workers: string) =>
      runCli(['evaluate', 'truth.csv', '--json', '--workers', workers], { cwd: folder });
    const [one, three] = [await by('1'), await by('3')];
    // Rejects answers in the order in which threads end: the broken files are done first.
    expect(three.stdout).toBe(one.stdout);
    const { files } = JSON.parse(three.stdout) as Document;
    expect(files.map(({ file }) => file)).toEqual(
      TABLE.split('\n')
        .slice(1)
        .map((row) => row.split(',')[0]),
    );
  });

  it('says once, before any recording is read, that a model cannot be used', async () => {
    const folder = scratch({ 'truth.csv': TABLE, 'no.json': '{"kind":"other"}' });
    const args = ['evaluate', 'truth.csv', '--model', 'no.json'];
    const run = await runCli(args, { cwd: folder });
    expect([run.status, run.stdout]).toEqual([2, '']);
    expect(run.stderr.match(/\[bad-model\]/g)).toHaveLength(1);
  });
});
