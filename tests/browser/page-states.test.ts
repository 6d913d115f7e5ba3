import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadSite } from '../../src/apps/cli/serve/site.js';
import {
  DESKTOP,
  goTo,
  heard,
  openEvidence,
  openFields,
  openPage,
  PHONE,
  present,
  record,
  recorded,
  serious,
  siteHearing,
} from './page-support.js';

let url = '';
let browser: Browser;
let close = async (): Promise<void> => {};

beforeAll(async () => {
  if (present) ({ url, browser, close } = await siteHearing('short-circuit'));
});
afterAll(() => close());

const SMALL = { ...PHONE, viewport: { width: 320, height: 600 } };

/** Looks for what keeps people out, and for what sticks out sideways; keeps a picture where one is asked for. */
async function inspect(page: Page, name: string): Promise<void> {
  const folder = process.env['PAGE_SHOTS'];
  if (folder) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
  expect(await serious(page), name).toEqual([]);
  const over = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(over, `${name}: pixels beyond the right edge`).toBeLessThanOrEqual(0);
}

async function judgeFiles(page: Page, ...names: string[]): Promise<void> {
  await goTo(page, 'Files');
  await page
    .locator('input[type=file]')
    .setInputFiles(names.map((name) => resolve('fixtures/recordings', name)));
  await expect
    .poll(() => page.locator('.job button.link').count(), { timeout: 120_000 })
    .toBe(names.length);
}

describe.skipIf(!present)('every state of the page', () => {
  it.each([
    ['small', SMALL],
    ['dark desktop', { ...DESKTOP, colorScheme: 'dark', reducedMotion: 'reduce' }],
  ] as const)('can be used by everybody: %s', async (size, options) => {
    const { page, context, troubles } = await openPage(browser, url, options);
    await inspect(page, `${size} record`);
    await openFields(page);
    await page.getByLabel('Set voltage').fill('900 V');
    await page.getByLabel('Set voltage').blur();
    await page.locator('[role=alert]').waitFor();
    await inspect(page, `${size} wrong set-up`);
    await page.getByLabel('Set voltage').fill('18.5 V');
    await page.getByLabel('Shielding gas').fill('Ar+18CO2');
    await page.getByLabel('Wire diameter').fill('0.9 mm');
    await page.getByLabel('Wanted mode').selectOption('spray');
    await page.locator('#record').click();
    await page.locator('.mode-state', { hasText: 'short-circuit' }).waitFor();
    await inspect(page, `${size} recording`);
    await heard(page, 5);
    await page.locator('#record').click();
    await page.locator('#verdict-words').waitFor();
    await openEvidence(page);
    await inspect(page, `${size} verdict`);
    await judgeFiles(page, 'spray.wav', 'globular.csv');
    await inspect(page, `${size} files`);
    await goTo(page, 'Runs');
    await page.locator('.run').first().waitFor();
    await page.getByRole('button', { name: 'Delete everything' }).click();
    await inspect(page, `${size} runs`);
    await page.getByRole('button', { name: 'Keep them' }).click();
    await page.locator('.run .link').last().click();
    await page.getByRole('button', { name: 'Show the evidence' }).click();
    await openEvidence(page);
    await page.getByRole('combobox', { name: 'Language' }).selectOption('de');
    await page.locator('h1', { hasText: 'Kurzlichtbogen' }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    // Rejects pictures that stay in the language they were first drawn in, or come to life in another.
    await page.locator('.evidence [lang=de] #when h2', { hasText: 'Wann war es?' }).waitFor();
    await page.locator('#stage').press('Home');
    expect(await page.locator('#readout').textContent()).toMatch(/^Bei 0,000 s: /);
    await inspect(page, `${size} German verdict`);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('can be worked by keyboard alone', async () => {
    const { page, context } = await openPage(browser, url);
    await page.keyboard.press('Tab');
    expect(await page.locator(':focus').getAttribute('class')).toBe('skip');
    await page.locator('#record').focus();
    await page.keyboard.press('Enter');
    await page.locator('.live-panel').waitFor();
    // The same key stops it: the focus has stayed where it was.
    await recorded(page, 2);
    await page.keyboard.press('Enter');
    await page.locator('#verdict-words').waitFor();
    await context.close();
  });

  it('opens and judges without a network once it was opened with one', async () => {
    const { page, context } = await openPage(browser, url);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await page.reload();
    await page.locator('#record').waitFor();
    await judgeFiles(page, 'short-circuit.wav', 'spray.csv');
    expect(await page.locator('.job').first().textContent()).toContain('Short-circuit transfer');
    await context.setOffline(false);
    await context.close();
  });

  it('says when there is no more room, and loses nothing that is on the screen', async () => {
    const before = `
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (...args) {
        if (this.name === 'runs' || this.name === 'files') throw new DOMException('full', 'QuotaExceededError');
        return put.apply(this, args);
      };`;
    const { page, context } = await openPage(browser, url, { before });
    await record(page, () => recorded(page, 3));
    await page.locator('[role=alert]', { hasText: 'could not be kept' }).waitFor();
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the sound' }).click();
    expect(statSync(await (await waiting).path()).size).toBeGreaterThan(100_000);
    await context.close();
  });

  // Rejects a field that a redraw sets back to what it held before the typing.
  it('keeps a name that is being typed while something else on the page changes', async () => {
    const { page, context } = await openPage(browser, url);
    await openFields(page);
    const booth = page.getByLabel('Machine');
    await booth.pressSequentially('nor');
    await page
      .locator('.options input[type=checkbox]')
      .first()
      .evaluate((box: HTMLElement) => box.click());
    await page.waitForTimeout(100);
    await booth.pressSequentially('th');
    expect(await booth.inputValue()).toBe('north');
    await context.close();
  });

  it('remembers the set-up of each booth, and forgets everything when asked to', async () => {
    const { page, context } = await openPage(browser, url);
    await openFields(page);
    const booth = page.getByLabel('Machine');
    const volts = page.getByLabel('Set voltage');
    const name = async (text: string): Promise<void> => {
      await booth.fill(text);
      await booth.blur();
    };
    await name('north');
    await volts.fill('18 V');
    await volts.blur();
    await name('south');
    await volts.fill('29 V');
    await volts.blur();
    await name('north');
    await expect.poll(() => volts.inputValue(), { timeout: 60_000 }).toBe('18 V');
    await page.reload();
    await openFields(page);
    await expect.poll(() => volts.inputValue(), { timeout: 60_000 }).toBe('18 V');
    await judgeFiles(page, 'spray.wav');
    await goTo(page, 'Runs');
    await page.getByRole('button', { name: 'Delete everything' }).click();
    await page.getByRole('button', { name: 'Yes, delete all' }).click();
    await page.getByText('No runs yet').waitFor();
    await page.reload();
    await page.locator('#record').waitFor();
    await openFields(page);
    await name('south');
    await page.waitForTimeout(300);
    expect(await volts.inputValue()).toBe('');
    await context.close();
  });

  it('weighs less than 1.8 MB packed before a decoder is needed', async () => {
    const site = await loadSite();
    const worker = readFileSync('dist/site/service-worker.js', 'utf8');
    const core = JSON.parse(/core:(\[[^\]]+\])/.exec(worker)?.[1] ?? '[]') as string[];
    expect(core).toContain('models/sound.json');
    expect(core).toContain('sounds/examples.bin');
    const files = core.map((one) => (one === './' ? 'index.html' : one));
    const bytes = files.reduce((sum, one) => sum + gzipSync(site.get(one)!).length, 0);
    expect(bytes).toBeGreaterThan(200_000);
    expect(bytes).toBeLessThan(1_800_000);
    console.info(`page: ${(bytes / 1e6).toFixed(2)} MB packed`);
  });
});
