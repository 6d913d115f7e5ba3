import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { englishIn } from '../support/english-words.js';
import { runCli } from '../support/run-cli.js';

const TRACE = 'fixtures/recordings/short-circuit.csv';
const SOUND = 'fixtures/recordings/spray.wav';

/** Without the names of files and channels, and of what the document names in English. */
const rest = (text: string): string =>
  text
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/\S*fixtures\/\S+/g, '')
    .replaceAll(/ (?:time|voltage|current) \[[a-z]\]/g, '')
    .replaceAll('CSV or TSV trace', '');

describe('--language', () => {
  // Rejects a command that prints a line of its own beside the words of the language.
  it.each([
    ['classify', TRACE, '--set-voltage', '24', '--wire', '1.2mm', '--gas', 'CO2'],
    ['classify', TRACE, SOUND],
    ['compare', TRACE, SOUND],
    ['expect', '--wire', '1.2mm', '--gas', 'M21', '--set-voltage', '24', '--wire-feed', '8m/min'],
    ['expect', '--gas', 'CO2'],
    ['inspect', TRACE],
    ['watch', SOUND, '--speed', 'max', '--expect', 'globular'],
  ])('makes %s speak German', async (...args) => {
    const { stdout, stderr } = await runCli([...args, '--language', 'de']);
    expect(stdout.length).toBeGreaterThan(100);
    expect(englishIn(rest(stdout).replaceAll(/arc-transfer classify/g, ''))).toEqual([]);
    expect(englishIn(rest(stderr))).toEqual([]);
  });

  it('makes a report in German, and says where it is in German', async () => {
    const out = join(mkdtempSync(join(tmpdir(), 'arc-')), 'a.html');
    const { stderr, status } = await runCli(['report', SOUND, '--out', out, '--language', 'de']);
    expect([status, stderr]).toEqual([0, `geschrieben: ${out}\n`]);
    expect(readFileSync(out, 'utf8')).toContain('<html lang="de">');
  });

  it('follows LC_ALL before LC_MESSAGES before LANG, and is said before all three', async () => {
    const first = async (env: Record<string, string>, ...more: string[]): Promise<string> => {
      const run = await runCli(['expect', '--gas', 'CO2', ...more], { env });
      return run.stdout.split('\n')[0]!;
    };
    const [german, english] = ['Worauf das beruht', 'What it rests on'];
    const all = (LC_ALL: string, LC_MESSAGES: string, LANG: string) => ({
      LC_ALL,
      LC_MESSAGES,
      LANG,
    });
    expect(await first(all('', '', 'de_DE.UTF-8'))).toBe(german);
    expect(await first(all('', 'en_GB', 'de_DE.UTF-8'))).toBe(english);
    expect(await first(all('de_AT', 'en_GB', 'en_GB'))).toBe(german);
    // A language that is not known here is English, not the next one.
    expect(await first(all('fr_FR', 'de_DE', 'de_DE'))).toBe(english);
    expect(await first(all('de_DE', '', ''), '--language', 'en')).toBe(english);
  });

  it('leaves JSON and CSV as they are', async () => {
    for (const form of ['--json', '--csv']) {
      const [english, german] = await Promise.all(
        ['en', 'de'].map((lang) => runCli(['classify', SOUND, form, '--language', lang])),
      );
      expect(german!.stdout).toBe(english!.stdout);
    }
  });

  it('refuses an unknown language before anything is read', async () => {
    const run = await runCli(['classify', 'nowhere.wav', '--language', 'ed']);
    expect(run.status).toBe(2);
    expect(run.stderr).toMatch(/no language "ed"\. Did you mean "(en|de)"\?/);
    expect(run.stdout).toBe('');
  });
});
