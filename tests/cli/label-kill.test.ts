import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { createRandom, type Random } from '../../src/core/index.js';
import { startLabel } from '../support/run-label.js';
import { scratch } from '../support/scratch.js';

const KILLS = 50;
const FILES = 60;
/** Inputs under way at once, for two threads and for the runner without threads alike. */
const UNDER_WAY = 4;

/** 60 inputs that take 0 to 12 ms each, some in doubt, some broken. */
function inputFiles(random: Random): Record<string, string> {
  const text = (i: number): string =>
    i % 20 === 7 ? 'broken' : `${i % 9 === 4 ? 'doubt' : 'arc'} ok ${random.integer(0, 12)}`;
  return Object.fromEntries(
    Array.from({ length: FILES }, (_, i) => [`recs/r${String(i).padStart(3, '0')}.wav`, text(i)]),
  );
}

/**
 * SIGKILL at random moments, from before the journal is there until the table is in its place.
 * Rejects: a table written in place (half a table seen), a journal that takes the rest of a torn line
 * for a record (a row lost or doubled), a lock that outlives its owner, and a run that starts over.
 */
it('loses, doubles and halves no row when it is killed at any moment', async () => {
  const random = createRandom(2026);
  const cwd = scratch({ ...inputFiles(random), log: '' });
  const log = join(cwd, 'log');
  const table = join(cwd, 't.csv');
  const labelled = (): number => readFileSync(log, 'utf8').split('\n').length - 1;
  const ownFiles = (): string[] => readdirSync(cwd).filter((name) => name.startsWith('t.csv'));
  const start = (out: string, threads: boolean) =>
    startLabel({
      inputs: ['recs'],
      options: { out, resume: true, workers: '2' },
      cwd,
      env: { LABEL_ENGINE_LOG: log, ...(threads ? {} : { LABEL_INLINE: '1' }) },
    });
  const labelling = async (child: { exitCode: number | null }): Promise<void> => {
    const size = statSync(log).size;
    while (statSync(log).size === size && child.exitCode === null) await sleep(2);
  };

  const first = start('whole.csv', true);
  const begunMs = performance.now();
  await labelling(first.child);
  const labellingMs = performance.now();
  await first.ended;
  const startMs = labellingMs - begunMs;
  const workMs = performance.now() - labellingMs;
  const whole = readFileSync(join(cwd, 'whole.csv'), 'utf8');
  expect(whole.split('\r\n')).toHaveLength(FILES + 2);

  writeFileSync(log, '');
  let kills = 0;
  let killsSince = 0;
  let finished = 0;
  while (kills < KILLS) {
    const { child, ended } = start('t.csv', kills % 5 === 0);
    // Most while it labels and writes the table, some while it starts.
    if (random.next() < 0.8) await labelling(child);
    else await sleep(random.uniform(0, startMs));
    await sleep(random.uniform(0, workMs));
    child.kill('SIGKILL');
    const { signal } = await ended;
    // Whatever the moment: under the name of the table there is nothing, or all of it.
    if (existsSync(table)) expect(readFileSync(table, 'utf8')).toBe(whole);
    if (signal === 'SIGKILL') {
      kills += 1;
      killsSince += 1;
      continue;
    }
    finished += 1;
    expect(existsSync(table)).toBe(true);
    // Each kill costs at most what was under way.
    expect(labelled()).toBeGreaterThanOrEqual(FILES);
    expect(labelled()).toBeLessThanOrEqual(FILES + killsSince * UNDER_WAY);
    for (const name of ownFiles()) rmSync(join(cwd, name));
    writeFileSync(log, '');
    killsSince = 0;
  }
  const last = await start('t.csv', true).ended;
  expect(last.status).toBe(1); // some inputs are broken
  expect(readFileSync(table, 'utf8')).toBe(whole);
  expect(ownFiles().sort()).toEqual(['t.csv', 't.csv.journal']);
  console.info(`${kills} kills; ${finished} runs in between came to their end`);
}, 600_000);
