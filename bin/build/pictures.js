// Takes the pictures of README: the report of a demo recording, and the page on a phone after it has judged
// the same recording. Needs a browser: `CHROMIUM=/usr/bin/chromium node bin/build/pictures.js`.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { startServer } from '../../dist/apps/cli/serve/server.js';
import { loadSite } from '../../dist/apps/cli/serve/site.js';

const OUT = 'fixtures/pictures';
/** As named in the pictures: no folder of whoever takes them. */
const RECORDING = 'fixtures/recordings/short-circuit.wav';
const SETUP = ['--set-voltage', '18.5', '--wire-diameter', '0.9mm', '--gas', 'C1'];
const folder = mkdtempSync(join(tmpdir(), 'arc-pictures-'));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-background-networking'],
});
try {
  const page = join(folder, 'report.html');
  const args = ['bin/arc-transfer.js', 'report', RECORDING, '--out', page, ...SETUP];
  const run = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: 'C' },
  });
  if (run.status !== 0) throw new Error(run.stderr);
  await shoot(pathToFileURL(page).href, { width: 960, height: 1240 }, 'report.png');
  await shootPage();
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}

async function shoot(url, viewport, name) {
  const context = await browser.newContext({ viewport, locale: 'en-GB' });
  const page = await context.newPage();
  await page.goto(url);
  await page.waitForTimeout(1000);
  await page.screenshot({ path: join(OUT, name) });
  await context.close();
}

async function shootPage() {
  const place = { address: '127.0.0.1', port: 0, open: false };
  const { server, port } = await startServer(await loadSite(), place, null);
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    locale: 'en-GB',
  });
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}/`);
  await page.locator('#record').waitFor();
  await page.getByRole('navigation').getByText('Files').click();
  await page.locator('.typed-setup summary').click();
  await page.getByLabel('Set voltage').fill('18.5 V');
  await page.getByLabel('Shielding gas').fill('90/10');
  await page.getByLabel('Wire diameter').fill('0.9 mm');
  await page.getByLabel('Wire feed').fill('6 m/min');
  await page.getByLabel('Voltage holds at').selectOption('feeder');
  await page.getByLabel('Wire material').selectOption('carbon-steel');
  await page.getByLabel('Wanted mode').selectOption('spray');
  await page.locator('input[type=file]').setInputFiles(RECORDING);
  await page.locator('.job button.link').click();
  await page.locator('#verdict-words').waitFor();
  await page.waitForTimeout(1500);
  await page.evaluate(() => scrollTo(0, 0));
  await page.screenshot({ path: join(OUT, 'page.png') });
  await context.close();
  server.close();
}
