/**
 * How long after Stop the page shows its verdict, on a recording of 20 s with a slowed-down processor, and
 * how long its main thread was busy at an arc interval. The whole renderer (page, workers, audio thread) is halted
 * for three quarters of the time while the verdict is made; that is stricter than the browser's own throttle,
 * which slows the main thread alone. Goals: under 1 s, no task over 100 ms unthrottled. Arguments: runs
 * (default 3), seconds (default 20), times slower (default 4).
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { longRecording } from '../browser/long-recording.js';
import {
  browserHearing,
  openEvidence,
  openPage,
  PHONE,
  recorded,
  serveSite,
} from '../browser/page-support.js';

const RUNS = Number(process.argv[2] ?? 3);
const SECONDS = Number(process.argv[3] ?? 20);
const SLOWER = Number(process.argv[4] ?? 4);
/** The page runs for this long at a time, ms. */
const SLICE_MS = 10;

/** Processes that run pages; the browser makes them anew for each context. */
async function renderers(browser: Browser): Promise<number[]> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return processInfo.filter((one) => one.type === 'renderer').map((one) => one.id);
}

/** Halts the processes for all but one part in `SLOWER` until told to end. */
function slowDown(pids: readonly number[]): () => void {
  let ended = false;
  const signal = (name: 'SIGSTOP' | 'SIGCONT'): void => {
    for (const pid of pids) process.kill(pid, name);
  };
  const turn = (running: boolean): void => {
    if (ended) return;
    signal(running ? 'SIGCONT' : 'SIGSTOP');
    setTimeout(() => turn(!running), running ? SLICE_MS : (SLOWER - 1) * SLICE_MS);
  };
  if (SLOWER > 1) turn(false);
  return () => {
    ended = true;
    signal('SIGCONT');
  };
}

/** Measured in the page itself: from the press of Stop to the frame that holds the verdict. */
const WATCH = `
  globalThis.tasks = [];
  new PerformanceObserver((list) => {
    for (const one of list.getEntries()) globalThis.tasks.push([one.startTime, one.duration]);
  }).observe({ type: 'longtask' });
  addEventListener('click', (event) => {
    if (event.target.closest('#record')) globalThis.pressed = performance.now();
  }, true);
  const look = () => {
    const there = document.querySelector('#verdict-words') !== null;
    if (there && globalThis.shown === undefined) globalThis.shown = performance.now();
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);`;

interface Watched {
  pressed: number;
  shown: number;
  tasks: [number, number][];
}

async function once(browser: Browser, url: string): Promise<void> {
  const { page, context } = await openPage(browser, url, { ...PHONE, before: WATCH });
  await page.locator('#record').click();
  await page.locator('.live-panel').waitFor();
  await recorded(page, SECONDS);
  const end = slowDown(await renderers(browser));
  try {
    await page.locator('#record').click();
    await page.locator('#verdict-words').waitFor();
  } finally {
    end();
  }
  await openEvidence(page);
  console.log(await line(page));
  await context.close();
}

async function line(page: Page): Promise<string> {
  const { pressed, shown, tasks } = await page.evaluate(() => {
    const all = globalThis as unknown as Watched;
    return { pressed: all.pressed, shown: all.shown, tasks: all.tasks };
  });
  const longest = (of: [number, number][]): string =>
    `${Math.max(0, ...of.map(([, ms]) => ms)).toFixed(0)} ms`;
  const words = await page.locator('#verdict-words').textContent();
  const before = longest(tasks.filter(([at]) => at < pressed));
  const during = longest(tasks.filter(([at]) => at >= pressed && at < shown));
  const after = longest(tasks.filter(([at]) => at >= shown));
  return `  ${words}: ${((shown - pressed) / 1000).toFixed(2)} s after Stop; longest task before Stop ${before}, until the verdict ${during}, drawing ${after}`;
}

const folder = mkdtempSync(join(tmpdir(), 'arc-bench-'));
const { server, url } = await serveSite();
try {
  console.log(`load of this machine: ${loadavg()[0]?.toFixed(1)}`);
  console.log(`${SECONDS} s recorded, everything in the page ${SLOWER} times slower:`);
  for (const mode of ['short-circuit', 'spray'] as const) {
    const browser = await browserHearing(await longRecording(mode, folder));
    for (let k = 0; k < RUNS; k++) await once(browser, url);
    await browser.close();
  }
} finally {
  server.close();
  rmSync(folder, { recursive: true });
}
