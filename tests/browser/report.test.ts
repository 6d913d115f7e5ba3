import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printPage } from '../../src/apps/cli/report/browser.js';
import {
  compareSection,
  indexEntry,
  indexPage,
  type RunView,
  runPage,
} from '../../src/apps/report/index.js';
import { GERMAN } from '../../src/apps/view/index.js';
import { englishIn } from '../support/english-words.js';
import { MADE, madeRun, madeSound } from '../support/report-run.js';
import { sampleResult } from '../support/sample-result.js';
import { scratch } from '../support/scratch.js';
import { CHROMIUM, present, serious, troublesOf } from './page-support.js';

let browser: Browser;
let script = '';

/** Opens a page from disk and notes everything it should not do. */
async function open(html: string, options: Parameters<Browser['newPage']>[0] = {}) {
  const file = join(scratch(), 'page.html');
  writeFileSync(file, html);
  const page = await browser.newPage({ viewport: { width: 1100, height: 900 }, ...options });
  const troubles = troublesOf(page);
  page.on('request', (request) => {
    const url = request.url();
    if (url !== pathToFileURL(file).href && !/^(data|blob):/.test(url))
      troubles.push(`request ${url.slice(0, 100)}`);
  });
  await page.goto(pathToFileURL(file).href);
  return { page, troubles };
}

const seconds = async (page: Page): Promise<[number, number]> => {
  const words = await page.locator('#time-d').textContent();
  const found = /^([\d.]+) to ([\d.]+) s\./.exec(words ?? '');
  return [Number(found?.[1]), Number(found?.[2])];
};

const marks = (page: Page) =>
  page.locator('.mark-short').evaluateAll((all) =>
    all.map((one) => ({
      startS: Number(one.getAttribute('data-start-s')),
      x: Number(one.getAttribute('x')),
      width: Number(one.getAttribute('width')),
    })),
  );

/** What of a page does not fit its screen. */
const layoutOf = (page: Page) =>
  page.evaluate(() => {
    const shown = (one: Element): boolean => one.getClientRects().length > 0;
    const all = (what: string): Element[] => [...document.querySelectorAll(what)].filter(shown);
    const labels = all('.chart text').map((one) => {
      const box = one.getBoundingClientRect();
      const frame = one.closest('svg')!.getBoundingClientRect();
      const out = box.left < frame.left - 1 || box.right > frame.right + 1;
      const scale = frame.width / one.closest('svg')!.viewBox.baseVal.width;
      return {
        text: one.textContent,
        out,
        px: scale * Number.parseFloat(getComputedStyle(one).fontSize),
      };
    });
    return {
      wide: document.documentElement.scrollWidth - window.innerWidth,
      cut: labels.filter(({ out }) => out),
      tiny: labels.filter(({ px }) => px < 9),
      small: all('button, select, summary, nav a, audio')
        .filter((one) => one.getBoundingClientRect().height < 44)
        .map((one) => one.textContent),
      empty: all('section').filter((one) => (one.textContent ?? '').trim().length < 40).length,
    };
  });

describe.skipIf(!present)('the report in a real browser', () => {
  let run: RunView;
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: CHROMIUM,
      args: ['--no-sandbox', '--disable-background-networking'],
    });
    const built = await build({
      entryPoints: ['src/apps/report/client/main.ts'],
      bundle: true,
      minify: true,
      write: false,
      format: 'iife',
      target: 'es2022',
      charset: 'ascii',
      logLevel: 'error',
    });
    script = built.outputFiles[0]!.text;
    run = madeRun();
  });
  afterAll(() => browser?.close());

  it('shows the verdict and is silent: no error, no request', async () => {
    const { page, troubles } = await open(runPage(run, script));
    expect(await page.locator('h1').textContent()).toBe('Short-circuit, very likely (94\u00a0%)');
    // Proves that the script ran under the page's own policy.
    expect(await page.locator('html').getAttribute('class')).toBe('live');
    expect(troubles).toEqual([]);
    await page.close();
  });

  // Rejects a script that draws anew in English what came in German, or that carries whole catalogues.
  it('draws anew in the language of the page', async () => {
    const { page, troubles } = await open(runPage(run, script, undefined, GERMAN));
    await page.locator('[data-do=in]').click();
    await page.waitForTimeout(300);
    const words = `${await page.locator('#time-d').textContent()} ${await page.locator('#time-picture').textContent()}`;
    expect(words).toMatch(/^\d[\d,]* bis \d[\d,]* s\. Kurzlichtbogen von /);
    expect(englishIn(words)).toEqual([]);
    expect(troubles).toEqual([]);
    expect(script.length).toBeLessThan(65_000);
  });

  it('zooms by buttons, by dragging and by the list, with marks at the right times', async () => {
    const { page, troubles } = await open(runPage(run, script));
    expect(await seconds(page)).toEqual([0, MADE.durationS]);
    await page.getByRole('button', { name: 'Zoom in' }).click();
    await page.waitForFunction(() =>
      document.querySelector('#time-d')?.textContent?.startsWith('3 to 9'),
    );
    const stage = (await page.locator('#stage').boundingBox())!;
    const inner = { left: stage.x + 52, width: stage.width - 62 };
    await page.mouse.move(inner.left + 0.25 * inner.width, stage.y + 200);
    await page.mouse.down();
    await page.mouse.move(inner.left + 0.3 * inner.width, stage.y + 210, { steps: 4 });
    await page.mouse.up();
    await page.waitForTimeout(100);
    const [fromS, toS] = await seconds(page);
    // 3 s + 0.25 and 0.3 of 6 s, to the width of a pixel.
    expect(fromS).toBeCloseTo(4.5, 1);
    expect(toS).toBeCloseTo(4.8, 1);
    const shown = await marks(page);
    expect(shown.length).toBeGreaterThanOrEqual(14);
    for (const { startS, x } of shown.slice(1)) {
      // Every short was made at 1.1 s + k · 20 ms, and must stand there on the axis.
      const k = Math.round((startS - MADE.firstShortS) / MADE.everyS);
      expect(Math.abs(startS - MADE.firstShortS - k * MADE.everyS)).toBeLessThan(3e-4);
      const share = (x - 52) / (stage.width - 62);
      expect(Math.abs(share - (startS - fromS) / (toS - fromS))).toBeLessThan(0.01);
    }
    await page.locator('#go-to').selectOption({ label: 'globular, from 7 s' });
    await page.waitForTimeout(100);
    expect((await seconds(page))[0]).toBeCloseTo(6.88, 1);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('is worked by keys alone and reads values out with units', async () => {
    const { page, troubles } = await open(runPage(run, script));
    await page.locator('#stage').focus();
    for (let k = 0; k < 4; k++) await page.keyboard.press('+');
    await page.keyboard.press('n');
    await page.waitForTimeout(100);
    const [fromS, toS] = await seconds(page);
    expect(toS - fromS).toBeCloseTo(12 / 16, 1);
    const words = (await page.locator('#readout').textContent())!;
    expect(words).toMatch(
      /^At \d+\.\d+ s: short-circuit, confidence 97 %; voltage .+ V; current .+ A; /,
    );
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('#readout').textContent()).not.toBe(words);
    await page.keyboard.press('0');
    await page.waitForTimeout(100);
    expect(await seconds(page)).toEqual([0, MADE.durationS]);
    expect(await page.locator('#readout').getAttribute('aria-live')).toBe('polite');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('plays the sound it holds', async () => {
    const { page, troubles } = await open(runPage(madeSound(), script));
    await page.waitForFunction(() => document.querySelector('audio')!.duration > 0);
    const durationS = await page.locator('audio').evaluate((one: HTMLAudioElement) => one.duration);
    expect(durationS).toBeCloseTo(10, 1);
    await page.locator('#stage').scrollIntoViewIfNeeded();
    const stage = (await page.locator('#stage').boundingBox())!;
    await page.mouse.click(stage.x + 52 + 0.5 * (stage.width - 62), stage.y + 60);
    const at = await page.locator('audio').evaluate((one: HTMLAudioElement) => one.currentTime);
    expect(at).toBeCloseTo(5, 1);
    await page.waitForFunction(
      () => getComputedStyle(document.querySelector('.player')!).display === 'block',
    );
    expect(troubles).toEqual([]);
    await page.close();
  });

  it.each([
    ['light', 1100],
    ['dark', 1100],
    ['light', 360],
  ] as const)('has no serious finding of axe-core, %s at %d pixels', async (colorScheme, width) => {
    const viewport = { width, height: 800 };
    const pages = [
      runPage(run, script),
      runPage(madeSound(), script),
      indexPage([indexEntry(run, 'a.html'), indexEntry(run, 'b.html')], compareSection(run, run)),
    ];
    for (const html of pages) {
      const { page, troubles } = await open(html, { colorScheme, viewport });
      expect(await serious(page)).toEqual([]);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(wide).toBeLessThanOrEqual(width);
      expect(troubles).toEqual([]);
      await page.close();
    }
  });

  it('runs nothing that comes in by a hostile name', async () => {
    const path = `"><img src=x onerror=alert(1)><script>alert(2)</script></script><svg onload=alert(3)>.wav`;
    const hostile = madeRun({ source: { ...sampleResult().source, path } });
    hostile.result.source.notes = [{ code: 'x', message: `</script><script>alert(4)</script>` }];
    const { page, troubles } = await open(runPage(hostile, script));
    expect(await page.locator('.file').first().textContent()).toBe(path);
    expect(await page.locator('html').getAttribute('class')).toBe('live');
    // Even markup that got in as markup would be stopped by the policy.
    await page.evaluate(() => {
      const foreign = document.createElement('script');
      foreign.textContent = 'document.title = "taken"';
      document.body.append(foreign);
    });
    expect(await page.title()).not.toBe('taken');
    expect(troubles.filter((one) => !one.includes('Content Security Policy'))).toEqual([]);
    await page.close();
  });

  it('says the same without its script, and prints every part', async () => {
    const { page } = await open(runPage(run, script), { javaScriptEnabled: false });
    expect(await page.locator('#time-picture svg .block').count()).toBe(2);
    expect(await page.locator('.controls').first().isVisible()).toBe(false);
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    await page.close();
  });

  // Rejects charts that only fit a wide screen: cut labels, text below 9 px, sections without content.
  it.each([320, 390, 1280])('fits a screen %d pixels wide', async (width) => {
    const { page } = await open(runPage(run, script), { viewport: { width, height: 844 } });
    await page.locator('#time-picture .chart').waitFor();
    const seen = await layoutOf(page);
    expect(seen).toEqual({ wide: expect.any(Number), cut: [], tiny: [], small: [], empty: 0 });
    expect(seen.wide).toBeLessThanOrEqual(0);
  });

  it('reads values out where a finger taps', async () => {
    const { page } = await open(runPage(run, script), {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    await page.locator('#time-picture .chart').tap({ position: { x: 200, y: 60 } });
    expect(await page.locator('#readout').textContent()).toMatch(/^At [\d.]+ s: short-circuit/);
  });

  it('makes cards of the table of an index on a phone', async () => {
    const entries = [indexEntry(run, 'a.html'), indexEntry(run, 'b.html')];
    const html = indexPage(entries, compareSection(run, madeRun()));
    const { page } = await open(html, { viewport: { width: 320, height: 844 } });
    const seen = await layoutOf(page);
    expect(seen).toEqual({ wide: expect.any(Number), cut: [], tiny: [], small: [], empty: 0 });
    expect(seen.wide).toBeLessThanOrEqual(0);
    const row = page.locator('table.cards tbody tr').first();
    expect((await row.boundingBox())!.width).toBeLessThanOrEqual(320);
    expect(await row.evaluate((one) => getComputedStyle(one).display)).toBe('block');
  });

  it('draws figures through the browser on the machine', async () => {
    const out = join(scratch(), 'figure.png');
    await printPage(CHROMIUM, '<!doctype html><p>x', out, { kind: 'png', width: 300, height: 200 });
    const bytes = readFileSync(out);
    expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    // Twice the pixels, for sharp print.
    expect(bytes.readUInt32BE(16)).toBe(600);
    expect(statSync(out).size).toBeGreaterThan(100);
  });
});
