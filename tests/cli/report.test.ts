import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { classifyCommand } from '../../src/apps/cli/classify/command.js';
import { findBrowser } from '../../src/apps/cli/report/browser.js';
import { reportCommand } from '../../src/apps/cli/report/command.js';
import { FAKE_ENGINE } from '../support/fake-engine.js';
import { scratch } from '../support/scratch.js';

const FILES = { 'a.wav': 'arc ok', 'b.csv': 'broken', 'c.wav': 'arc unsure' };

let words = '';
// The build does the same; the tests must not depend on a stale one.
beforeAll(() =>
  build({
    entryPoints: ['src/apps/report/client/main.ts'],
    outfile: 'dist/report-page.js',
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    charset: 'ascii',
    logLevel: 'error',
  }),
);
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

/** Runs the command; gives the exit status. */
async function run(folder: string, inputs: string[], options: Record<string, unknown>) {
  process.exitCode = undefined;
  const given = inputs.map((one) => join(folder, one));
  const out = join(folder, String(options['out']));
  await reportCommand(given, { ...options, out }, FAKE_ENGINE);
  return Number(process.exitCode ?? 0);
}

describe('reportCommand', () => {
  it('writes one page for one recording', async () => {
    const folder = scratch(FILES);
    expect(await run(folder, ['a.wav'], { out: 'page.html' })).toBe(0);
    const page = readFileSync(join(folder, 'page.html'), 'utf8');
    expect(page).toContain('<h1 id="verdict-words">Short-circuit');
    expect(page).toContain('Content-Security-Policy');
    expect(words).toContain('page.html');
    expect(readdirSync(folder).filter((one) => one.endsWith('.partial'))).toEqual([]);
  });

  it('writes an index and a page each for several, and goes on after a bad one', async () => {
    const folder = scratch(FILES);
    expect(await run(folder, ['a.wav', 'b.csv', 'c.wav'], { out: 'all.html' })).toBe(1);
    const index = readFileSync(join(folder, 'all.html'), 'utf8');
    const links = [...index.matchAll(/<th scope="row"><a href="([^"]+)"/g)].map((one) => one[1]!);
    expect(links).toEqual([
      'all-runs/01-a.wav.html',
      'all-runs/02-b.csv.html',
      'all-runs/03-c.wav.html',
    ]);
    for (const link of links) expect(existsSync(join(folder, link))).toBe(true);
    expect(index).toContain('1 with a mode, 1 unsure, 0 without an arc, 1 failed');
    const bad = readFileSync(join(folder, links[1]!), 'utf8');
    expect(bad).toContain('This input could not be judged');
    expect(bad).toContain('href="../all.html"');
  });

  it('does not replace a file unless told to', async () => {
    const folder = scratch({ ...FILES, 'page.html': 'mine' });
    await expect(run(folder, ['a.wav'], { out: 'page.html' })).rejects.toMatchObject({
      code: 'file-exists',
    });
    expect(readFileSync(join(folder, 'page.html'), 'utf8')).toBe('mine');
    await run(folder, ['a.wav'], { out: 'page.html', overwrite: true });
    expect(readFileSync(join(folder, 'page.html'), 'utf8')).toContain('<!doctype html>');
  });

  it('writes a single figure as SVG, and says which a run shows', async () => {
    const folder = scratch(FILES);
    await run(folder, ['a.wav'], { out: 'why.svg', figure: 'reasons' });
    expect(readFileSync(join(folder, 'why.svg'), 'utf8')).toMatch(/^<\?xml/);
    await expect(
      run(folder, ['a.wav'], { out: 'v.svg', format: 'svg', figure: 'levels' }),
    ).rejects.toMatchObject({ code: 'figure-not-shown' });
    expect(existsSync(join(folder, 'v.svg'))).toBe(false);
  });

  it('refuses wrong use before it reads anything', async () => {
    const folder = scratch(FILES);
    const code = (options: Record<string, unknown>, inputs = ['a.wav']) =>
      run(folder, inputs, options).then(
        () => 'nothing refused',
        (error: { code: string }) => error.code,
      );
    expect(await code({ out: 'x.svg', figure: 'rythm' })).toBe('bad-figure');
    expect(await code({ out: 'x.svg' }, ['a.wav', 'c.wav'])).toBe('one-input');
    expect(await code({ out: 'x.html', figure: 'time' })).toBe('figure-without-format');
    expect(await code({ out: 'x.png', browser: '/nowhere/chromium' })).toBe('no-browser');
    expect(await code({ out: 'no/such/folder/x.html' })).toBe('cannot-write');
    expect(readdirSync(folder).toSorted()).toEqual(Object.keys(FILES));
  });
});

describe('classify --report', () => {
  it('makes the page beside its own output, from the same reading', async () => {
    const folder = scratch(FILES);
    const [out, report] = [join(folder, 'r.json'), join(folder, 'r.html')];
    await classifyCommand([join(folder, 'a.wav')], { json: true, out, report }, FAKE_ENGINE);
    expect(JSON.parse(readFileSync(out, 'utf8')).status).toBe('ok');
    expect(readFileSync(report, 'utf8')).toContain('<h1 id="verdict-words">Short-circuit');
  });
});

describe('findBrowser', () => {
  it('says what to do where there is none', async () => {
    vi.stubEnv('PATH', '/nowhere');
    await expect(findBrowser(undefined)).rejects.toThrow(/Install one, or take --format svg/);
    vi.unstubAllEnvs();
  });
});
