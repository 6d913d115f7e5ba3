// Draws the process maps of ten common set-ups as pictures to be looked at, one sheet for all:
// `CHROMIUM=/usr/bin/chromium node bin/build/maps.js <folder>`. Run it after any change to the map.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { htmlDocument } from '../../dist/apps/report/document.js';
import { mapChart } from '../../dist/apps/report/process-map/svg-map.js';
import { languageNamed } from '../../dist/apps/view/index.js';
import { unitOf } from '../../dist/core/index.js';
import { forecast as forecastOf, forecastPicture, parseSetup } from '../../dist/setup/index.js';

/** Set-ups as they stand on many machines: common practice, no source. Volts at the feeder while welding. */
const SETUPS = [
  [
    '0.8 mm steel, 75/25, thin sheet',
    '0.8mm',
    'carbon-steel',
    '75/25',
    16.5,
    '4m/min',
    'short-circuit',
  ],
  ['0.9 mm steel, 75/25', '0.9mm', 'carbon-steel', '75/25', 18.5, '6m/min', 'short-circuit'],
  ['0.9 mm steel, CO2', '0.9mm', 'carbon-steel', 'CO2', 20, '6m/min', 'short-circuit'],
  ['1.0 mm steel, M21', '1.0mm', 'carbon-steel', 'Ar+18CO2', 28, '12m/min', 'spray'],
  ['1.2 mm steel, M21', '1.2mm', 'carbon-steel', 'Ar+18CO2', 29, '9m/min', 'spray'],
  ['1.2 mm steel, 90/10', '1.2mm', 'carbon-steel', '90/10', 28, '10m/min', 'spray'],
  [
    '1.2 mm steel, CO2, by design globular',
    '1.2mm',
    'carbon-steel',
    'CO2',
    28,
    '8m/min',
    'globular',
  ],
  ['1.6 mm steel, Ar + 2 % O2', '1.6mm', 'carbon-steel', 'Ar+2O2', 27, '6m/min', 'spray'],
  ['1.0 mm stainless, Ar + 2 % CO2', '1.0mm', 'stainless-steel', 'Ar+2CO2', 26, '9m/min', 'spray'],
  ['1.2 mm aluminium, argon', '1.2mm', 'aluminium', 'Ar', 23, '10m/min', 'spray'],
];

const [folder] = process.argv.slice(2);
if (!folder) throw new Error('Name the folder for the pictures.');
mkdirSync(folder, { recursive: true });
const words = languageNamed('en');
const charts = SETUPS.map(([title, wire, wireMaterial, gas, feederVolts, wireFeed, expect], k) => {
  const setup = parseSetup({ wire, wireMaterial, gas, feederVolts, wireFeed, expect });
  const forecast = forecastOf(setup);
  const picture = forecastPicture(setup, forecast, { columns: 60, rows: 60 });
  const feed = unitOf('feed', 'metric');
  const svg = mapChart(picture, `map-${k}`, words.numbers, feed, words.map);
  return { title, svg, said: forecast.likeliest?.text ?? 'no point' };
});
const body = charts.map(
  ({ title, svg, said }) =>
    `<figure class="card"><h3>${title}</h3>${svg}<figcaption>${said}</figcaption></figure>`,
);
const file = resolve(join(folder, 'maps.html'));
writeFileSync(file, htmlDocument('Process maps', `<main class="shapes">${body.join('')}</main>`));
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-background-networking'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1180, height: 900 } });
  await page.goto(pathToFileURL(file).href);
  await page.screenshot({ path: join(folder, 'maps.png'), fullPage: true });
} finally {
  await browser.close();
}
for (const { title, said } of charts) process.stdout.write(`${title}: ${said}\n`);
