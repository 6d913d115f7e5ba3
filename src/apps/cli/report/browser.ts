import { spawn } from 'node:child_process';
import { constants } from 'node:fs';
import { access, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ArcError } from '../../../core/index.js';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const LONGEST_MS = 120_000;

/** What a browser makes of a page: a picture of this many pixels, or paper. */
export type Print = { kind: 'png'; width: number; height: number } | { kind: 'pdf' };

/**
 * The browser named, or the first Chromium or Chrome on the PATH.
 * @throws ArcError `no-browser`
 */
export async function findBrowser(named: string | undefined): Promise<string> {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((one) => one !== '');
  const places = named ? [named] : NAMES.flatMap((name) => folders.map((one) => join(one, name)));
  for (const place of places) {
    if (await isProgram(place)) return place;
  }
  throw new ArcError({
    code: 'no-browser',
    what: named
      ? `${named} is not a program that can be run.`
      : 'PNG and PDF are drawn by Chromium or Chrome, and none was found on the PATH.',
    expected: 'Chromium or Chrome, on the PATH or named with --browser <path>',
    todo: 'Install one, or take --format svg or html, which need no browser.',
  });
}

/**
 * Lets a browser draw a page into a file. The page is handed over as a temporary file; nothing is fetched.
 * @throws ArcError `browser-failed`
 */
export async function printPage(
  browser: string,
  html: string,
  out: string,
  print: Print,
): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'arc-transfer-'));
  try {
    const page = join(folder, 'page.html');
    await writeFile(page, html);
    const shape =
      print.kind === 'pdf'
        ? [`--print-to-pdf=${out}`, '--no-pdf-header-footer']
        : [
            `--screenshot=${out}`,
            `--window-size=${Math.ceil(print.width)},${Math.ceil(print.height)}`,
            '--force-device-scale-factor=2',
            '--hide-scrollbars',
          ];
    await run(browser, [
      '--headless',
      '--disable-gpu',
      '--disable-background-networking',
      '--no-first-run',
      `--user-data-dir=${join(folder, 'profile')}`,
      // The sandbox of Chromium refuses to work for root.
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      ...shape,
      pathToFileURL(page).href,
    ]);
    await access(out);
  } catch (cause) {
    throw new ArcError({
      code: 'browser-failed',
      what: `${browser} did not draw the page: ${cause instanceof Error ? cause.message : String(cause)}.`,
      expected: 'a Chromium or Chrome that runs without a screen',
      todo: 'Try another with --browser <path>, or take --format svg.',
      cause,
    });
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 3 });
  }
}

function run(program: string, args: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: 'ignore', timeout: LONGEST_MS });
    child.on('error', reject);
    child.on('exit', (code, signal) => {
      if (code === 0) resolve();
      else reject(new Error(`it ended with ${signal ?? `status ${code}`}`));
    });
  });
}

async function isProgram(path: string): Promise<boolean> {
  return access(path, constants.X_OK).then(
    () => true,
    () => false,
  );
}
