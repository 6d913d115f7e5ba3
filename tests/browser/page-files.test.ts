import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { analyse, defaultSettings } from '../../src/analysis/index.js';
import type { Result } from '../../src/analysis/result/index.js';
import { viewVerdict } from '../../src/apps/view/result-view.js';
import { ENGLISH } from '../../src/apps/view/words/index.js';
import { openFileSource } from '../../src/files/file-source.js';
import { loadShippedModel } from '../../src/files/shipped-models.js';
import { openRecording, writeWav } from '../../src/recording/index.js';
import { parseSetup } from '../../src/setup/index.js';
import { shippedRecording } from '../support/judge.js';
import { scratch } from '../support/scratch.js';
import { goTo, heard, openPage, present, record, siteHearing } from './page-support.js';

let url = '';
let browser: Browser;
let close = async (): Promise<void> => {};

beforeAll(async () => {
  if (present) ({ url, browser, close } = await siteHearing('globular'));
});
afterAll(() => close());

/** What the command line says of a file. */
async function fromNode(
  path: string,
  setup: Record<string, string> = {},
  settings = defaultSettings(),
): Promise<Result> {
  const source = await openFileSource(path);
  const recording = await openRecording(source);
  const result = await analyse(recording, {
    setup: parseSetup(setup),
    settings,
    loadModel: loadShippedModel,
    path,
    sha256: null,
    host: 'node',
  });
  await source.close();
  return result;
}

async function saved(page: Page, name: string): Promise<string> {
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  return (await (await waiting).path()) as string;
}

/** Everything that must be equal: all but where it came from and what it was computed on. */
function comparable({ source, tool, ...rest }: Result): unknown {
  return JSON.parse(JSON.stringify({ ...rest, tool: { ...tool, host: '' } }));
}

/** Equal in shape and words; numbers within 1e-9 of their size. */
function expectSame(a: unknown, b: unknown, path = ''): void {
  if (typeof a === 'number' && typeof b === 'number') {
    const far = Math.abs(a - b) > 1e-9 * Math.max(Math.abs(a), Math.abs(b));
    if (far) expect.fail(`${path}: ${a} against ${b}`);
  } else if (a !== null && b !== null && typeof a === 'object' && typeof b === 'object') {
    expect(Object.keys(a), path).toEqual(Object.keys(b));
    for (const key of Object.keys(a))
      expectSame((a as never)[key], (b as never)[key], `${path}.${key}`);
  } else expect(a, path).toBe(b);
}

describe.skipIf(!present)('files in the browser', () => {
  // Rejects another set of settings, another model, or a reader of its own.
  it.each(['short-circuit.wav', 'pulsed-spray.wav', 'globular.csv', 'spray.csv'])(
    'says of %s what the command line says',
    async (name) => {
      const path = resolve('fixtures/recordings', name);
      const { page, context, troubles } = await openPage(browser, url);
      await goTo(page, 'Files');
      await page.getByLabel('Set voltage').fill('18.5 V');
      await page.getByLabel('Shielding gas').fill('Ar+18CO2');
      await page.getByLabel('Wire diameter').fill('0.9 mm');
      await page.locator('input[type=file]').setInputFiles(path);
      await page.locator('.job button.link').click();
      await page.locator('#verdict-words').waitFor();
      const result = JSON.parse(
        readFileSync(await saved(page, 'Save the result'), 'utf8'),
      ) as Result;
      const setup = { setVoltage: '18.5 V', gas: 'Ar+18CO2', wireDiameter: '0.9 mm' };
      expectSame(comparable(result), comparable(await fromNode(path, setup)));
      expect(result.tool.host).toBe('browser');
      expect(result.source.path).toBe(name);
      expect(troubles).toEqual([]);
      await context.close();
    },
  );

  // Rejects a verdict that is made from anything but the samples that are kept.
  it('gives for its own recording, saved and judged again, the same answer', async () => {
    const { page, context } = await openPage(browser, url);
    await record(page, () => heard(page, 6));
    const wav = await saved(page, 'Save the sound');
    const result = JSON.parse(readFileSync(await saved(page, 'Save the result'), 'utf8')) as Result;
    const again = await fromNode(wav);
    expect(again.source.durationS).toBeGreaterThan(5);
    expectSame(comparable(result), comparable(again));
    await context.close();
  });

  // Rejects a button that changes the words alone, or an answer that is gone when the run is opened again.
  it('judges again, told that somebody welded, where the sound left it open', async () => {
    const { page, context, troubles } = await openPage(browser, url);
    // Out of the middle of a spray arc, which is left open by ear.
    const { sampleRateHz, channels } = await shippedRecording('spray.wav');
    const [from, to] = [1.2 * sampleRateHz, 4.2 * sampleRateHz];
    const path = join(scratch(), 'middle.wav');
    writeFileSync(path, await writeWav([channels[0]!.slice(from, to)], sampleRateHz));
    await goTo(page, 'Files');
    await page.locator('input[type=file]').setInputFiles(path);
    await page.locator('.job button.link').click();
    const weld = page.getByRole('button', { name: 'It was a weld' });
    await weld.click();
    // Its words change while it judges.
    const asked = page.getByRole('button', { name: /It was a weld|Judging/ });
    await expect.poll(() => asked.count(), { timeout: 30_000 }).toBe(0);
    const result = JSON.parse(readFileSync(await saved(page, 'Save the result'), 'utf8')) as Result;
    const told = await fromNode(path, {}, { ...defaultSettings(), arcPrior: 0.95 });
    expectSame(comparable(result), comparable(told));
    await goTo(page, 'Runs');
    const { headline } = viewVerdict(told, ENGLISH);
    await page.locator('.run', { hasText: headline }).first().waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('works off several, tells progress, lets one be cancelled, and calls a bad one failed', async () => {
    const { page, context } = await openPage(browser, url);
    const folder = mkdtempSync(join(scratch(), 'files-'));
    // Long enough (two minutes) that it is still under way when it is cancelled.
    const wav = readFileSync('fixtures/recordings/spray.wav');
    const long = Buffer.concat([wav, ...Array.from({ length: 200 }, () => wav.subarray(44))]);
    long.writeUInt32LE(long.length - 8, 4);
    long.writeUInt32LE(long.length - 44, 40);
    writeFileSync(join(folder, 'long.wav'), long);
    writeFileSync(join(folder, 'letter.bin'), Buffer.from([1, 2, 3, 4, 250, 251]));
    await goTo(page, 'Files');
    await page
      .locator('input[type=file]')
      .setInputFiles([
        join(folder, 'long.wav'),
        join(folder, 'letter.bin'),
        resolve('fixtures/recordings/short-circuit.wav'),
      ]);
    await page.locator('progress').waitFor();
    await page.getByRole('button', { name: 'Cancel: long.wav' }).click();
    await page.locator('.job', { hasText: 'long.wav' }).getByText('cancelled').waitFor();
    await page
      .locator('.job', { hasText: 'letter.bin' })
      .getByText('could not be judged')
      .waitFor();
    const sound = page.locator('.job', { hasText: 'short-circuit.wav' });
    await sound.getByText('Short-circuit transfer').waitFor();
    await context.close();
  });

  it('shows names from outside as text and saves them disarmed', async () => {
    const { page, context, troubles } = await openPage(browser, url);
    const evil = '<img src=x onerror=alert(1)>"\'.wav';
    const folder = mkdtempSync(join(scratch(), 'evil-'));
    writeFileSync(join(folder, evil), readFileSync('fixtures/recordings/spray.wav'));
    await page.getByLabel('Student').fill('=1+1<script>alert(2)</script>');
    await page.getByLabel('Booth').fill('<svg onload=alert(3)>');
    await goTo(page, 'Files');
    await page.locator('input[type=file]').setInputFiles(join(folder, evil));
    await page.locator('.job button.link').click();
    await page.locator('#stage svg').first().waitFor();
    expect(await page.locator('.answer-card .file').textContent()).toBe(evil);
    await goTo(page, 'Runs');
    await page.locator('.run').first().waitFor();
    expect(await page.locator('img, main script').count()).toBe(0);
    const table = readFileSync(await saved(page, 'Save all runs'), 'utf8');
    expect(table).toContain("'=1+1<script>");
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('reads a format whose decoder is fetched when needed', async () => {
    const { page, context, troubles } = await openPage(browser, url);
    const requests: string[] = [];
    page.on('request', (one) => requests.push(one.url()));
    await goTo(page, 'Files');
    const flac = join(scratch(), 'dip.flac');
    const made = spawnSync('sox', [resolve('fixtures/recordings/short-circuit.wav'), flac]);
    if (made.status !== 0) return console.warn('skipped: FLAC in the browser needs sox');
    await page.locator('input[type=file]').setInputFiles(flac);
    await page.locator('.job button.link').click();
    await page.locator('#verdict-words').waitFor();
    expect(await page.locator('.answer-card').textContent()).toContain('Short-circuit transfer');
    expect(troubles).toEqual([]);
    await context.close();
  });
});
