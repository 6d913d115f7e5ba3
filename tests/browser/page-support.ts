import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { startServer } from '../../src/apps/cli/serve/server.js';
import { loadSite } from '../../src/apps/cli/serve/site.js';
import { longRecording } from './long-recording.js';

export const CHROMIUM = '/usr/bin/chromium';
const AXE = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** How long a state is waited for: a machine may be busy with other things. */
const PATIENCE_MS = 120_000;

/** False where there is no browser to test in. */
export const present = existsSync(CHROMIUM);
if (!present) console.warn(`skipped: pages in a real browser need ${CHROMIUM}`);

export const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
export const DESKTOP = { viewport: { width: 1200, height: 900 } };

/** The page served on loopback, as `arc-transfer serve` does. */
export async function serveSite(): Promise<{ server: Server; url: string }> {
  const place = { address: '127.0.0.1', port: 0, open: false };
  const { server, port } = await startServer(await loadSite(), place, null);
  return { server, url: `http://127.0.0.1:${port}/` };
}

/** A browser whose microphone plays a WAV file, and begins again where it ends. */
export function browserHearing(wav: string): Promise<Browser> {
  return chromium.launch({
    executablePath: CHROMIUM,
    args: [
      '--no-sandbox',
      '--disable-background-networking',
      '--autoplay-policy=no-user-gesture-required',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-audio-capture=${wav}`,
    ],
  });
}

/** What a page writes to the console as wrong, throws, or asks in a dialog, from now on. */
export function troublesOf(page: Page): string[] {
  const troubles: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('dialog', (dialog) => {
    troubles.push(`dialog ${dialog.message()}`);
    void dialog.dismiss();
  });
  return troubles;
}

/** A page with everything noted that it should not do. */
export async function openPage(
  browser: Browser,
  url: string,
  options: Parameters<Browser['newContext']>[0] & { microphone?: boolean; before?: string } = {},
): Promise<{ page: Page; context: BrowserContext; troubles: string[] }> {
  const { microphone = true, before, ...rest } = options;
  const context = await browser.newContext({ locale: 'en-GB', ...DESKTOP, ...rest });
  if (microphone) await context.grantPermissions(['microphone'], { origin: new URL(url).origin });
  if (before) await context.addInitScript(before);
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const troubles = troublesOf(page);
  context.on('request', (request) => {
    const to = request.url();
    if (!to.startsWith(url) && !/^(data|blob):/.test(to))
      troubles.push(`request ${to.slice(0, 90)}`);
  });
  await page.goto(url);
  await page.locator('#record').waitFor();
  return { page, context, troubles };
}

/** Findings of axe-core that keep somebody from using the page. */
export async function serious(page: Page): Promise<string[]> {
  // Put in through the debugger, which the page's policy does not concern.
  await page.evaluate(readFileSync(AXE, 'utf8'));
  const { violations } = await page.evaluate(() =>
    (
      globalThis as unknown as {
        axe: {
          run(): Promise<{
            violations: { id: string; impact: string; nodes: { html: string }[] }[];
          }>;
        };
      }
    ).axe.run(),
  );
  return violations
    .filter((one) => one.impact === 'serious' || one.impact === 'critical')
    .map((one) => `${one.id}: ${one.nodes[0]?.html.slice(0, 160)}`);
}

/** Opens a part of the page; resolves when it is drawn: what is typed before may go to the part before. */
export async function goTo(page: Page, part: 'Files' | 'Runs'): Promise<void> {
  await page.getByRole('button', { name: part }).click();
  await page.locator('nav [aria-current=page]', { hasText: part }).waitFor();
}

/** Opens the fields to type into; what they hold is also under the fields to tap. */
export async function openFields(page: Page): Promise<void> {
  const fields = page.locator('.typed-setup');
  if ((await fields.getAttribute('open')) === null) await fields.locator('summary').click();
  await page.getByLabel('Set voltage').waitFor();
}

/** Opens pictures and playback, which are drawn on demand. */
export async function openEvidence(page: Page): Promise<void> {
  await page.locator('.evidence summary').first().click();
  await page.locator('#stage svg').first().waitFor();
}

/** Waits until so many seconds are recorded, by the page's own count. */
export async function recorded(page: Page, seconds: number): Promise<void> {
  await countReaches(page, '.live-panel .elapsed', seconds);
}

/** Waits until the page counts so many seconds of steady arc. */
export async function heard(page: Page, seconds: number): Promise<void> {
  await countReaches(page, '.live-panel .usable', seconds);
}

async function countReaches(page: Page, selector: string, least: number): Promise<void> {
  await page.waitForFunction(
    ([where, count]) =>
      Number.parseFloat(document.querySelector(where)?.textContent ?? '0') >= count,
    [selector, least] as const,
  );
}

/** Presses Record, listens until `enough`, presses Stop; resolves when the verdict is there. */
export async function record(page: Page, enough: () => Promise<void>): Promise<void> {
  await page.locator('#record').click();
  await page.locator('.live-panel').waitFor();
  await enough();
  await page.locator('#record').click();
  await page.locator('#verdict-words').waitFor();
}

/** For a file of tests: the page, and a browser whose microphone hears a demonstration recording without end. */
export async function siteHearing(name: string) {
  const sounds = mkdtempSync(join(tmpdir(), 'arc-heard-'));
  const { server, url } = await serveSite();
  const browser = await browserHearing(await longRecording(name, sounds));
  const close = async (): Promise<void> => {
    await browser.close();
    server.close();
    rmSync(sounds, { recursive: true, force: true });
  };
  return { url, browser, close };
}
