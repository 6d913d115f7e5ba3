import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeWav } from '../../src/recording/index.js';
import { scratch } from '../support/scratch.js';
import { wholeRun } from './long-recording.js';
import {
  browserHearing,
  goTo,
  openFields,
  openPage,
  PHONE,
  present,
  recorded,
  serious,
  serveSite,
} from './page-support.js';

/** The screen the answer is laid out for. */
const TALL = { ...PHONE, viewport: { width: 390, height: 844 } };
/** 460 pixels an inch, three to a CSS pixel, as phones 390 px wide have them (makers' figures, from memory). */
const MM_PER_PX = (25.4 * 3) / 460;
const FAR_MM = 2000;

let server: Server;
let url = '';
let browser: Browser;
let sounds = '';

beforeAll(async () => {
  if (!present) return;
  ({ server, url } = await serveSite());
  sounds = mkdtempSync(join(tmpdir(), 'arc-heard-'));
  browser = await browserHearing(await wholeRun('short-circuit', sounds));
});
afterAll(async () => {
  await browser?.close();
  server?.close();
  if (sounds !== '') rmSync(sounds, { recursive: true, force: true });
});

/** The angle under which a height on the screen is seen at two metres, minutes of arc. */
const minutes = (px: number): number => (60 * 180 * Math.atan((px * MM_PER_PX) / FAR_MM)) / Math.PI;

async function chip(page: Page, name: string): Promise<void> {
  await page.locator(`.chip-${name}`).click();
  await page.locator('dialog[open]').waitFor();
}

const chipText = (page: Page, name: string): Promise<string | null> =>
  page.locator(`.chip-${name} .chip-value`).textContent();

async function judged(page: Page, name: string): Promise<void> {
  await goTo(page, 'Files');
  await page.locator('input[type=file]').setInputFiles(resolve('fixtures/recordings', name));
  await page.locator('.job', { hasText: name }).locator('button.link').click();
  await page.locator('.glance').waitFor();
}

/** The newest kept run, changed. */
async function change(page: Page, result: Record<string, unknown>): Promise<void> {
  await page.evaluate(async (changes) => {
    const database = await new Promise<IDBDatabase>((done) => {
      const asked = indexedDB.open('arc-transfer');
      asked.onsuccess = () => done(asked.result);
    });
    const store = database.transaction('runs', 'readwrite').objectStore('runs');
    const runs = await new Promise<{ result: object }[]>((done) => {
      const asked = store.index('createdMs').getAll();
      asked.onsuccess = () => done(asked.result);
    });
    const run = runs.at(-1);
    if (run) Object.assign(run.result, changes);
    await new Promise((done) => {
      store.put(run).onsuccess = done;
    });
    database.close();
  }, result);
  await page.reload();
  // By place, not by name: in any language.
  await page.locator('nav.parts button').nth(1).click();
  await page.locator('.run .link').first().click();
  await page.locator('.glance').waitFor();
}

describe.skipIf(!present)('set-up by tapping', () => {
  // Rejects a set-up that takes a keyboard, and one that is gone with the page.
  it('takes five taps for mode, wire, gas and material, and is remembered', async () => {
    const { page, context, troubles } = await openPage(browser, url, TALL);
    await page.evaluate(() => {
      const counted = globalThis as unknown as { taps: number };
      counted.taps = 0;
      addEventListener('click', () => (counted.taps += 1), true);
    });
    await chip(page, 'expect');
    for (const name of ['spray', '1.2 mm', '90/10', 'carbon steel'])
      await page.locator('.pick-one', { hasText: name }).first().click();
    await page.locator('dialog').waitFor({ state: 'detached' });
    const taps = await page.evaluate(() => (globalThis as unknown as { taps: number }).taps);
    expect(taps).toBe(5);
    await page.reload();
    await expect.poll(() => chipText(page, 'gas')).toBe('90/10');
    expect(await chipText(page, 'expect')).toBe('spray');
    expect(await chipText(page, 'wireDiameter')).toBe('1.2 mm');
    expect(await chipText(page, 'wireMaterial')).toBe('carbon steel');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('has a number pad, by finger and by keyboard, in the units of the switch', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    await chip(page, 'setVoltage');
    for (const key of ['1', '8', '.', '5'])
      await page.locator('.pad-key', { hasText: key }).click();
    expect(await serious(page)).toEqual([]);
    await page.locator('.pad-ok').click();
    await expect.poll(() => chipText(page, 'setVoltage')).toBe('18.5 V');
    await chip(page, 'wireFeed');
    await page.locator('.unit-switch button').nth(1).click();
    await page.locator('.pad-key').first().focus();
    await page.keyboard.type('2505');
    await page.keyboard.press('Backspace');
    await page.locator('.pad-ok').click();
    await expect.poll(() => chipText(page, 'wireFeed')).toBe('250 in/min');
    await chip(page, 'wireDiameter');
    await page.locator('.pick-one', { hasText: '0.035 in' }).waitFor();
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    expect(await page.locator('.chip-wireDiameter:focus').count()).toBe(1);
    await context.close();
  });

  it('keeps several machines by name, each with its own set-up', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    for (const [name, wire] of [
      ['Bench 1', '0.9 mm'],
      ['Bench 2', '1.2 mm'],
    ] as const) {
      await chip(page, 'booth');
      await page.locator('.new-name input').fill(name);
      await page.locator('.new-name button').click();
      await chip(page, 'wireDiameter');
      await page.locator('.pick-one', { hasText: wire }).click();
      if ((await page.locator('dialog').count()) > 0) await page.keyboard.press('Escape');
      await expect.poll(() => chipText(page, 'wireDiameter')).toBe(wire);
    }
    await page.reload();
    await chip(page, 'booth');
    await page.locator('.pick-one', { hasText: 'Bench 1' }).click();
    await expect.poll(() => chipText(page, 'wireDiameter')).toBe('0.9 mm');
    await context.close();
  });
});

describe.skipIf(!present)('recording', () => {
  // Rejects a page that refuses to record, judges nothing, or compares with what can't be.
  it('is stopped by nothing that is typed; every wrong field is marked and left out', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    await openFields(page);
    await page.getByLabel('Wire diameter').fill('.035');
    await page.getByLabel('Set voltage').fill('900 V');
    await page.getByLabel('Shielding gas').fill('laughing gas');
    await page.getByLabel('Stick-out').fill('a lot');
    await page.locator('#record').click();
    await page.locator('.live-panel').waitFor();
    // Struck, out, and over without a press.
    await page.locator('#verdict-words').waitFor();
    expect(await page.locator('.field-head').textContent()).toContain('.035 in');
    expect(await page.locator('.field-head').textContent()).not.toContain('900');
    await page.locator('.again').click();
    const marked = page.locator('.wrong-fields li');
    await marked.first().waitFor();
    expect(await marked.count()).toBe(3);
    const said = await page.locator('.wrong-fields').textContent();
    for (const words of ['Volts set: left out', 'Gas: left out', 'Stick-out: left out'])
      expect(said).toContain(words);
    await openFields(page);
    expect(await page.locator('[aria-invalid=true]').count()).toBe(3);
    expect(await serious(page)).toEqual([]);
    await context.close();
  });

  it('counts down to "your turn" while it records already, and stops by itself once the arc is out', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    await page.locator('#record').click();
    await page.locator('.turn', { hasText: 'Your turn in' }).waitFor();
    await recorded(page, 1);
    await page.locator('.turn', { hasText: 'Your turn: weld' }).waitFor();
    await page.locator('.arc-state', { hasText: /^Arc$/ }).waitFor();
    await page.locator('#verdict-words').waitFor();
    await context.close();
  });

  it('keeps the screen on, and survives a call that takes the sound away', async () => {
    const before = `
      globalThis.locks = 0;
      const lock = { release: async () => { globalThis.locks -= 1; } };
      Object.defineProperty(navigator, 'wakeLock', {
        value: { request: async () => { globalThis.locks += 1; return lock; } },
      });
      globalThis.contexts = [];
      const Real = AudioContext;
      globalThis.AudioContext = class extends Real {
        constructor(...given) { super(...given); globalThis.contexts.push(this); }
      };`;
    const { page, context } = await openPage(browser, url, { ...TALL, before });
    const locks = (): Promise<number> =>
      page.evaluate(() => (globalThis as unknown as { locks: number }).locks);
    await page.locator('#record').click();
    await page.locator('.live-panel').waitFor();
    await recorded(page, 2);
    expect(await locks()).toBe(1);
    await page.evaluate(() =>
      Promise.all(
        (globalThis as unknown as { contexts: AudioContext[] }).contexts.map((one) =>
          one.state === 'running' ? one.suspend() : undefined,
        ),
      ),
    );
    await page.locator('#verdict-words').waitFor();
    expect(await page.locator('main').textContent()).toContain('A call or the locked screen');
    await expect.poll(locks).toBe(0);
    await context.close();
  });

  it.each([
    ['silence', () => 0, 'Too quiet'],
    ['a sound at the rails', (k: number) => (k % 90 < 45 ? 1 : -1), 'Too loud'],
    ['wind', (k: number) => 0.4 * Math.sin((2 * Math.PI * 30 * k) / 48_000), 'Wind or knocks'],
  ] as const)('coaches at %s', async (name, sample, words) => {
    const file = join(scratch(), `${name.replaceAll(' ', '-')}.wav`);
    const samples = Float64Array.from({ length: 48_000 * 6 }, (_, k) => sample(k));
    writeFileSync(file, await writeWav([samples], 48_000));
    const other = await browserHearing(file);
    try {
      const { page } = await openPage(other, url, TALL);
      await page.locator('#record').click();
      await page.locator('.level-state', { hasText: words }).waitFor();
      expect(await serious(page)).toEqual([]);
    } finally {
      await other.close();
    }
  });
});

/** Every oscillator that sounds, and everything that is read out. */
const LISTENING = `
  globalThis.heard = [];
  const Real = OscillatorNode;
  globalThis.OscillatorNode = class extends Real {
    constructor(context, options) { super(context, options); globalThis.heard.push(options.frequency); }
  };
  globalThis.said = [];
  Object.defineProperty(globalThis, 'speechSynthesis', {
    value: { cancel() {}, speak(one) { globalThis.said.push([one.lang, one.text]); } },
  });`;

describe.skipIf(!present)('the answer', () => {
  // Whatever the page makes of what it hears here, tone and voice must say what the sign on the screen says.
  it('sounds as the sign beside the wanted mode says, and is read out only where that is wanted', async () => {
    for (const speaks of [true, false]) {
      const { page, context } = await openPage(browser, url, { ...TALL, before: LISTENING });
      const heard = (): Promise<number[]> =>
        page.evaluate(() => (globalThis as unknown as { heard: number[] }).heard);
      const said = (): Promise<string[][]> =>
        page.evaluate(() => (globalThis as unknown as { said: string[][] }).said);
      await openFields(page);
      await page.getByLabel('Wanted mode').selectOption('spray');
      await page.locator('.options summary').click();
      await page.getByLabel('Read the answer out').setChecked(speaks);
      await page.locator('#record').click();
      await page.locator('.live-panel').waitFor();
      await recorded(page, 2);
      await page.locator('#record').click();
      await page.locator('.wanted').waitFor();
      // The signs of the recording are all of one pitch; the two notes of the answer come last.
      await expect.poll(async () => (await heard()).filter((hz) => hz !== 620).length).toBe(2);
      const [first = 0, second = 0] = (await heard()).slice(-2);
      const way = second > first ? 'right' : second < first ? 'wrong' : 'open';
      expect(await page.locator(`.wanted-${way}`).count()).toBe(1);
      const answer = { right: 'yes', wrong: 'no', open: 'not settled' }[way];
      if (!speaks) expect(await said()).toEqual([]);
      else {
        await expect.poll(said).toHaveLength(1);
        expect((await said())[0]).toEqual([
          'en',
          expect.stringContaining(`Wanted spray: ${answer}`),
        ]);
      }
      await context.close();
    }
  });

  /** What the eye meets: heights in minutes of arc at two metres, and what lies below the screen. */
  async function seen(page: Page) {
    const px = await page.evaluate(() => {
      const letters = document.querySelector('.answer-name .fit-lines') as HTMLElement;
      const pen = document.createElement('canvas').getContext('2d')!;
      const { font } = getComputedStyle(letters);
      pen.font = font;
      // Letters may be drawn taller than their font.
      const [line] = letters.children;
      const taller = line!.getBoundingClientRect().height / (line as HTMLElement).offsetHeight;
      const bottom = (selector: string): number =>
        document.querySelector(selector)?.getBoundingClientRect().bottom ?? 0;
      return {
        letter: taller * pen.measureText('H').actualBoundingBoxAscent,
        sign: document.querySelector('.answer-sign')?.getBoundingClientRect().height ?? 0,
        below: Math.max(bottom('.wanted'), bottom('.todo'), bottom('.again')) - innerHeight,
        beyond: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      };
    });
    return { ...px, letter: minutes(px.letter), sign: minutes(px.sign) };
  }

  // A letter of 5 minutes is the least that sight without fault reads (Snellen's definition of 6/6). Three times
  // that in English; German names are longer, twice.
  it.each([
    ['en-GB', 15],
    ['de-DE', 10],
  ] as const)('is read at two metres in all its kinds: %s', async (locale, least) => {
    const { page, context } = await openPage(browser, url, { ...TALL, locale });
    await page.locator('.chip-expect').click();
    await page.locator('.pick-one').nth(0).click();
    await page.keyboard.press('Escape');
    await page.locator('nav.parts button').nth(3).click();
    await page
      .locator('input[type=file]')
      .setInputFiles(resolve('fixtures/recordings/globular.wav'));
    await page.locator('.job button.link').click();
    await page.locator('.glance').waitFor();
    const kinds: Record<string, unknown>[] = [
      ...['short-circuit', 'globular', 'spray', 'pulsed-spray', 'mixed'].map((mode) => ({
        status: 'ok',
        mode,
      })),
      { status: 'unsure', mode: null, confidence: null, probabilities: null },
      { status: 'no-arc', mode: null, confidence: null },
      { status: 'failed', mode: null, confidence: null },
    ];
    const heights: number[] = [];
    const drawings = new Set<string>();
    const grounds = new Set<string>();
    for (const kind of kinds) {
      await change(page, kind);
      const { letter, sign, below, beyond } = await seen(page);
      const name = JSON.stringify(kind);
      expect(letter, `${name}: letters`).toBeGreaterThanOrEqual(least);
      expect(sign, `${name}: sign`).toBeGreaterThanOrEqual(15);
      expect(below, `${name}: pixels below the screen`).toBeLessThanOrEqual(0);
      expect(beyond, `${name}: pixels beyond the right edge`).toBeLessThanOrEqual(0);
      heights.push(letter);
      drawings.add(await page.locator('.mode-drawing').innerHTML());
      grounds.add((await page.locator('.answer-field .ground rect').getAttribute('fill')) ?? '');
    }
    const smallest = Math.min(...heights).toFixed(1);
    console.info(`letters of the answer at 2 m, ${locale}: ${smallest} minutes of arc at least`);
    // Without colour: a drawing and a pattern of its own for every kind.
    expect(drawings.size).toBe(kinds.length);
    expect(grounds.size).toBe(kinds.length);
    await context.close();
  });

  it('keeps the trainer’s own word, and shows the run over time first', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    await judged(page, 'globular.wav');
    const first = page.locator('#details > *').first();
    expect(await first.getAttribute('class')).toBe('mode-strip');
    expect(await first.locator('svg').getAttribute('aria-label')).toContain('globular from');
    await page.locator('.trainer').getByLabel('spray', { exact: true }).check();
    await page.locator('.trainer', { hasText: 'The trainer says: spray' }).waitFor();
    await page.reload();
    await goTo(page, 'Runs');
    await page.locator('.run .link').first().click();
    expect(await page.locator('.trainer').getByLabel('spray', { exact: true }).isChecked()).toBe(
      true,
    );
    expect(await serious(page)).toEqual([]);
    await context.close();
  });
});

describe.skipIf(!present)('training by ear', () => {
  it('plays each mode with its sign in words and in a picture that moves', async () => {
    const { page, context, troubles } = await openPage(browser, url, TALL);
    await page.getByRole('button', { name: 'Hear' }).click();
    await page.locator('.sound-picture').nth(3).waitFor();
    expect(await serious(page)).toEqual([]);
    expect(await page.locator('.hear').textContent()).toContain('Simulated sound');
    const marks = page.locator('.sound-marks').nth(0);
    const still = await marks.getAttribute('d');
    await page.getByRole('button', { name: 'Play short-circuit' }).click();
    await expect.poll(() => marks.getAttribute('d')).not.toBe(still);
    // Over after its length, without a press.
    await page.getByRole('button', { name: 'Play short-circuit' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('drills ten sounds blind, and keeps the score by what each was', async () => {
    const { page, context, troubles } = await openPage(browser, url, TALL);
    await page.getByRole('button', { name: 'Hear' }).click();
    await page.getByRole('button', { name: 'Start with simulated sounds' }).click();
    let right = 0;
    for (let k = 1; k <= 10; k++) {
      await page.locator('h1', { hasText: `Sound ${k} of 10` }).waitFor();
      // Blind: nothing on the screen may tell before the answer.
      expect(await page.locator('.sound-picture, .drill-said').count()).toBe(0);
      await page.locator('.answer-choice', { hasText: 'pulsed spray' }).click();
      const said = await page.locator('.drill-said').textContent();
      if (said?.includes('Right')) right += 1;
      if (k === 1) expect(await serious(page)).toEqual([]);
      await page.locator('.drill .again').click();
    }
    await page.locator('h1', { hasText: `${right} of 10 right` }).waitFor();
    const score = await page.locator('.drill ul').textContent();
    const counts = [...(score ?? '').matchAll(/(\d+) of (\d+)/g)].map((one) =>
      one.slice(1).map(Number),
    );
    expect(counts.reduce((sum, [, asked = 0]) => sum + asked, 0)).toBe(10);
    expect(counts.reduce((sum, [told = 0]) => sum + told, 0)).toBe(right);
    await page.reload();
    await page.getByRole('button', { name: 'Hear' }).click();
    await page.locator('.hear ul', { hasText: 'of' }).waitFor();
    expect(await page.locator('.hear ul').textContent()).toBe(score);
    expect(troubles).toEqual([]);
    await context.close();
  });

  // Simulated globular and spray are no proof of how real ones sound.
  it('drills globular against spray from runs that the trainer has named, and only from them', async () => {
    const { page, context } = await openPage(browser, url, TALL);
    await page.getByRole('button', { name: 'Hear' }).click();
    const own = page.getByRole('button', { name: 'Start with own runs' });
    expect(await own.getAttribute('aria-disabled')).toBe('true');
    for (const mode of ['globular', 'spray']) {
      await judged(page, `${mode}.wav`);
      await page.locator('.trainer').getByLabel(mode, { exact: true }).check();
      await page.locator('.trainer', { hasText: `The trainer says: ${mode}` }).waitFor();
    }
    await page.getByRole('button', { name: 'Hear' }).click();
    await own.click();
    await page.locator('h1', { hasText: 'Sound 1 of 10' }).waitFor();
    expect(await page.locator('.answer-choice').allTextContents()).toEqual([
      'short-circuit',
      'globular',
      'spray',
      'pulsed spray',
    ]);
    await context.close();
  });
});
