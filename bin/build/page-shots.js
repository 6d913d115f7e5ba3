// Takes a picture of every state of the page at 390 x 844, by day and by night, to be looked at one by one:
// `npm run build && node bin/build/page-shots.js <folder> [language] [light|dark] [part of a name]`. Needs a browser.
// States that no recording at hand gives (mixed, not clear, no arc, failed) are made from a kept run by changing it.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { startServer } from '../../dist/apps/cli/serve/server.js';
import { loadSite } from '../../dist/apps/cli/serve/site.js';

const [OUT = 'shots', LANGUAGE = 'en-GB', ONLY_SCHEME, ONLY] = process.argv.slice(2);
const MODES = ['short-circuit', 'globular', 'spray', 'pulsed-spray'];
const SIZE = { width: 390, height: 844 };

mkdirSync(OUT, { recursive: true });
const { server, port } = await startServer(
  await loadSite(),
  { address: '127.0.0.1', port: 0, open: false },
  null,
);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-background-networking',
    '--autoplay-policy=no-user-gesture-required',
    '--use-fake-device-for-media-stream',
  ],
});
try {
  for (const scheme of ONLY_SCHEME ? [ONLY_SCHEME] : ['light', 'dark']) await allStates(scheme);
} finally {
  await browser.close();
  server.close();
}

async function allStates(scheme) {
  const url = `http://127.0.0.1:${port}/`;
  const context = await browser.newContext({
    viewport: SIZE,
    hasTouch: true,
    isMobile: true,
    locale: LANGUAGE,
    colorScheme: scheme,
    reducedMotion: 'reduce',
  });
  await context.grantPermissions(['microphone'], { origin: url });
  const page = await context.newPage();
  await page.goto(url);
  await page.locator('#record').waitFor();
  const shot = async (name, fullPage = false) => {
    if (ONLY && !name.includes(ONLY)) return;
    await page.waitForTimeout(150);
    await page.screenshot({ path: join(OUT, `${scheme}-${name}.png`), fullPage });
  };
  const tab = (k) => page.locator('nav.parts button').nth(k).click();
  await shot('record-first');
  await page.locator('.chip-expect').click();
  await shot('sheet-wanted');
  await page.locator('.pick-one').nth(2).click();
  await shot('sheet-wire');
  await page.locator('.pick-one').nth(2).click();
  await shot('sheet-gas');
  await page.locator('.pick-one').nth(2).click();
  await shot('sheet-material');
  await page.locator('.pick-one').nth(0).click();
  await page.locator('.chip-setVoltage').click();
  // 2, 7, the point, 5, by their places.
  for (const place of [7, 0, 9, 4]) await page.locator('.pad-key').nth(place).click();
  await shot('sheet-pad');
  await page.locator('.pad-ok').click();
  await page.locator('.chip-student').click();
  await page.locator('.new-name input').fill('Student 4');
  await shot('sheet-student');
  await page.locator('.new-name button').click();
  await shot('record-set');
  await shot('record-all', true);
  await page.locator('.typed-setup summary').click();
  await page.locator('.typed-setup input').nth(4).fill('900 V');
  await page.locator('.typed-setup input').nth(4).blur();
  await page.evaluate(() => scrollTo(0, 0));
  await shot('record-wrong');
  await page.locator('.typed-setup input').nth(4).fill('27.5 V');
  await page.locator('.typed-setup input').nth(4).blur();
  await page.locator('#record').click();
  await page.locator('.live-panel').waitFor();
  await page.waitForTimeout(1500);
  await shot('countdown');
  await page.waitForTimeout(5500);
  await shot('recording');
  await page.locator('#record').click();
  await page.locator('#verdict-words').waitFor();
  await shot('answer-recorded');
  for (const mode of MODES) await judge(page, mode, shot);
  await changed(page, shot);
  await page.locator('.glance-bar .again').click();
  await shot('record-after', true);
  await page.locator('nav.parts button').nth(2).click();
  await shot('runs', true);
  await page.locator('nav.parts button').nth(3).click();
  await page.locator('.sound-picture').first().waitFor();
  await shot('hear', true);
  await page.locator('.hear .block button').first().click();
  await page.locator('.drill').waitFor();
  await shot('drill-question');
  for (let k = 0; k < 10; k++) {
    await page
      .locator('.answer-choice')
      .nth(k % 3)
      .click();
    if (k === 0) await shot('drill-answered');
    await page.locator('.drill .again').click();
  }
  await shot('drill-score');
  await page.locator('.drill .again').click();
  await tab(4);
  await shot('files', true);
  await page.locator('footer .link').click();
  await shot('about', true);
  await context.close();
}

async function judge(page, mode, shot) {
  await page.locator('nav.parts button').nth(4).click();
  await page.locator('input[type=file]').setInputFiles(`fixtures/recordings/${mode}.wav`);
  await page.locator('.job').nth(MODES.indexOf(mode)).locator('button.link').click();
  await page.locator('.glance').waitFor();
  await page.evaluate(() => scrollTo(0, 0));
  await shot(`answer-${mode}`);
  await page.locator('.glance-bar .to-why').click();
  if (mode === 'globular') await shot('details', true);
}

/** The same run as if it had been answered in other ways. */
async function changed(page, shot) {
  const answers = {
    mixed: { status: 'ok', mode: 'mixed', confidence: 0.81 },
    either: {
      status: 'unsure',
      mode: null,
      confidence: null,
      probabilities: { 'short-circuit': 0.01, globular: 0.55, spray: 0.42, 'pulsed-spray': 0.02 },
    },
    open: {
      status: 'unsure',
      mode: null,
      confidence: null,
      probabilities: { 'short-circuit': 0.3, globular: 0.25, spray: 0.25, 'pulsed-spray': 0.2 },
    },
    'no-arc': { status: 'no-arc', mode: null, confidence: null, segments: [], arcStretches: [] },
    failed: { status: 'failed', mode: null, confidence: null, segments: [], arcStretches: [] },
  };
  for (const [name, change] of Object.entries(answers)) {
    await page.evaluate(async (changes) => {
      const database = await new Promise((resolve) => {
        const asked = indexedDB.open('arc-transfer');
        asked.onsuccess = () => resolve(asked.result);
      });
      const store = database.transaction('runs', 'readwrite').objectStore('runs');
      const [run] = await new Promise((resolve) => {
        const asked = store.index('createdMs').getAll();
        asked.onsuccess = () => resolve(asked.result.reverse());
      });
      Object.assign(run.result, { crossCheck: null }, changes);
      await new Promise((resolve) => {
        store.put(run).onsuccess = resolve;
      });
      database.close();
    }, change);
    await page.reload();
    await page.locator('#record').waitFor();
    await page.locator('nav.parts button').nth(1).click();
    await page.locator('.run .link').first().click();
    await page.locator('.glance').waitFor();
    await shot(`answer-${name}`);
  }
}
