import { writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ENGLISH } from '../../src/apps/view/index.js';
import { MODES } from '../../src/core/index.js';
import { writeWav } from '../../src/recording/index.js';
import { scratch } from '../support/scratch.js';
import { longRecording, wholeRun } from './long-recording.js';
import {
  browserHearing,
  goTo,
  heard,
  openEvidence,
  openPage,
  PHONE,
  present,
  record,
  recorded,
  serveSite,
} from './page-support.js';

/** Steady arc that the page must have counted before the arc ends, s; every recording holds over 4 s. */
const LISTEN_S = 2;

let server: Server;
let url = '';

beforeAll(async () => {
  ({ server, url } = await serveSite());
});
afterAll(() => {
  server?.close();
});

async function wavOf(sample: (k: number) => number): Promise<string> {
  const file = join(scratch(), 'heard.wav');
  writeFileSync(
    file,
    await writeWav([Float64Array.from({ length: 48_000 * 6 }, (_, k) => sample(k))], 48_000),
  );
  return file;
}

async function hearing<T>(wav: string, act: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await browserHearing(wav);
  try {
    return await act(browser);
  } finally {
    await browser.close();
  }
}

describe.skipIf(!present)('recording in the browser', () => {
  // Rejects a page that resamples, loses samples, or names modes by anything but what it hears.
  // Heard anew, twice at most: the make-believe device stutters on a busy machine, which a page cannot mend.
  it.each(MODES)('hears %s and says so', { retry: 2 }, async (mode) => {
    await hearing(await wholeRun(mode, scratch()), async (browser) => {
      const { page, troubles } = await openPage(browser, url, PHONE);
      await page.locator('#record').click();
      await page.locator('.mode-state', { hasText: ENGLISH.mode(mode) }).waitFor();
      await heard(page, LISTEN_S);
      // The arc goes out, and the recording ends by itself.
      await page.locator('#verdict-words').waitFor();
      // A faint beat may leave open whether it was an arc at all; who welded knows.
      const weld = page.getByRole('button', { name: 'It was a weld' });
      if ((await weld.count()) > 0) {
        await weld.click();
        await weld.waitFor({ state: 'detached' });
      }
      const words = await page.locator('#verdict-words').textContent();
      expect(words?.toLowerCase()).toBe(`${ENGLISH.mode(mode)} transfer`);
      expect(await page.locator('.cautions').textContent()).toContain('not an inspection');
      // The words come first, the pictures after them.
      await openEvidence(page);
      expect(await page.locator('audio').getAttribute('src')).toMatch(/^blob:/);
      expect(troubles).toEqual([]);
    });
  });

  // Rejects a page that names a mode whenever there is sound.
  it.each([
    ['silence', () => 0],
    // A plain generator, so that the noise is the same each time.
    ['noise', (k: number) => 0.1 * (((Math.imul(k + 1, 2654435761) >>> 8) % 20001) / 10000 - 1)],
  ] as const)('names no mode for %s', async (_, sample) => {
    await hearing(await wavOf(sample), async (browser) => {
      const { page } = await openPage(browser, url);
      await record(page, () => recorded(page, 4));
      const words = await page.locator('#verdict-words').textContent();
      expect(words).toMatch(/^(No arc in this recording|Unsure: no mode is named)$/);
    });
  });

  it('asks for raw sound and tells what the browser really did', async () => {
    await hearing(await longRecording('spray', scratch()), async (browser) => {
      const before = `
        const real = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
        navigator.mediaDevices.getUserMedia = async (wanted) => {
          globalThis.wanted = wanted;
          const stream = await real(wanted);
          const [track] = stream.getAudioTracks();
          const settings = track.getSettings();
          track.getSettings = () => ({ ...settings, autoGainControl: true });
          return stream;
        };`;
      const { page } = await openPage(browser, url, { before });
      await page.locator('#record').click();
      await page.locator('.live-panel .trouble', { hasText: 'gain control' }).waitFor();
      const wanted = await page.evaluate(
        () => (globalThis as unknown as { wanted: unknown }).wanted,
      );
      expect(wanted).toMatchObject({
        audio: { autoGainControl: false, noiseSuppression: false, echoCancellation: false },
      });
      await recorded(page, 2);
      await page.locator('#record').click();
      await page.locator('#verdict-words').waitFor();
      // In the evidence too, not on the screen alone.
      expect(await page.locator('details').first().textContent()).toContain(
        'STILL ON: gain control',
      );
    });
  });

  it('says what to do when the microphone is refused or missing', async () => {
    await hearing(await longRecording('spray', scratch()), async (browser) => {
      for (const [name, words] of [
        ['NotAllowedError', 'Allow it for this page'],
        ['NotFoundError', 'No microphone was found'],
        ['NotReadableError', 'in use by something else'],
      ]) {
        const before = `navigator.mediaDevices.getUserMedia = async () => { throw new DOMException('no', '${name}'); };`;
        const { page, context } = await openPage(browser, url, { before });
        await page.locator('#record').click();
        const alert = page.locator('[role=alert]');
        await alert.waitFor();
        expect(await alert.textContent()).toContain(words);
        await context.close();
      }
    });
  });

  it('keeps and judges what was recorded before the microphone was taken away', async () => {
    await hearing(await longRecording('spray', scratch()), async (browser) => {
      const before = `
        const real = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
        navigator.mediaDevices.getUserMedia = async (wanted) => {
          const stream = await real(wanted);
          globalThis.unplug = () => {
            const [track] = stream.getAudioTracks();
            track.stop();
            track.dispatchEvent(new Event('ended'));
          };
          return stream;
        };`;
      const { page } = await openPage(browser, url, { before });
      await page.locator('#record').click();
      await page.locator('.live-panel').waitFor();
      await recorded(page, 4);
      await page.evaluate(() => (globalThis as unknown as { unplug(): void }).unplug());
      await page.locator('#verdict-words').waitFor();
      expect(await page.locator('main').textContent()).toContain('The microphone was taken away');
      await openEvidence(page);
      // The player knows the length a moment after it is shown.
      const seconds = () =>
        page.locator('audio').evaluate((one) => (one as HTMLAudioElement).duration);
      await expect.poll(seconds, { timeout: 60_000 }).toBeGreaterThan(3);
    });
  });

  it('finds a recording again that a closed page left behind', async () => {
    await hearing(await longRecording('spray', scratch()), async (browser) => {
      const { page, context } = await openPage(browser, url);
      await page.locator('#record').click();
      await page.locator('.live-panel').waitFor();
      await recorded(page, 5);
      await page.close();
      const next = await context.newPage();
      await next.goto(url);
      const leftover = next.locator('.leftover');
      await leftover.waitFor();
      const seconds = Number(
        /([\d.]+) s were kept/.exec((await leftover.textContent()) ?? '')?.[1],
      );
      // At most the second that was not yet full is lost.
      expect(seconds).toBeGreaterThan(3.5);
      await leftover.getByRole('button', { name: 'Judge it' }).click();
      await next.locator('#verdict-words').waitFor();
      await goTo(next, 'Runs');
      await next.locator('.run').first().waitFor();
      expect(await next.locator('.run').count()).toBe(1);
    });
  });
});
