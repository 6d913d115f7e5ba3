import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { runLabel, startLabel } from '../support/run-label.js';
import { scratch } from '../support/scratch.js';

const PASSWORD = 'invented for this test';
const installed = spawnSync('redis-server', ['--version']).status === 0;

let redis: ChildProcess;
let url: string;

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as { port: number };
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** A Redis on the loopback that keeps nothing on disk. */
async function startRedis(port: number): Promise<ChildProcess> {
  const script = join(import.meta.dirname, '../support/redis.mjs');
  const child = spawn(process.execPath, [script], {
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
    env: {
      ...process.env,
      REDIS_CONFIG: `port ${port}\nbind 127.0.0.1\nsave ""\nappendonly no\nrequirepass "${PASSWORD}"\n`,
    },
  });
  await new Promise<void>((resolve, reject) => {
    child.on('exit', () => reject(new Error('redis-server ended')));
    child.stdout?.on('data', (text) => String(text).includes('Ready to accept') && resolve());
  });
  return child;
}

/** A worker; `ended` gives its words. */
function startWorker(cwd: string, options: object = {}, env: Record<string, string> = {}) {
  const script = join(import.meta.dirname, '../support/work-cli.mjs');
  const all = { queue: url, workers: '2', stalledAfter: '2', ...options };
  const child = spawn(process.execPath, [script, JSON.stringify(all)], {
    cwd,
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    env: { ...process.env, ARC_TRANSFER_QUEUE_PASSWORD: PASSWORD, ...env },
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  let words = '';
  child.stderr?.on('data', (text) => {
    words += text;
  });
  const ended = new Promise<string>((resolve) => child.on('close', () => resolve(words)));
  return { child, ended };
}

function recordings(): Record<string, string> {
  const text = (i: number): string =>
    i === 4 ? 'broken' : i === 6 ? 'crash' : i === 8 ? 'doubt' : `arc ok ${(i * 7) % 30}`;
  return Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`recs/r${i + 10}.wav`, text(i)]));
}

const run = (cwd: string, out: string, more: object = {}, env: Record<string, string> = {}) => ({
  inputs: ['recs'],
  options: { out, resume: true, ...more },
  cwd,
  env: { ARC_TRANSFER_QUEUE_PASSWORD: PASSWORD, ...env },
});

describe.skipIf(!installed)('label over a queue (needs redis-server)', () => {
  beforeAll(async () => {
    const port = await freePort();
    redis = await startRedis(port);
    url = `redis://127.0.0.1:${port}`;
  });
  afterAll(() => {
    redis.disconnect();
  });

  it('gives the table of one machine byte for byte, though a worker is killed and one asks late', async () => {
    const cwd = scratch({ ...recordings(), log: '' });
    const log = join(cwd, 'log');
    await runLabel(run(cwd, 'one.csv'));
    // The killed worker has an input under way: nothing but its recovery by another can finish it.
    writeFileSync(join(cwd, 'recs/r10.wav'), 'arc ok 3000');
    await runLabel(run(cwd, 'one.csv'));
    const first = startWorker(cwd, {}, { LABEL_ENGINE_LOG: log });
    const label = startLabel(run(cwd, 'q.csv', { queue: url }));
    while (!readFileSync(log, 'utf8').includes('r10')) await sleep(5);
    first.child.kill('SIGKILL');
    const second = startWorker(cwd, { stopWhenIdle: '3' });
    const ended = await label.ended;
    expect(ended.status).toBe(1); // broken and crash
    expect(readFileSync(join(cwd, 'q.csv'), 'utf8')).toBe(
      readFileSync(join(cwd, 'one.csv'), 'utf8'),
    );
    expect(await second.ended).not.toContain('error');
  }, 240_000);

  it('loses nothing when the asking process is killed, and finds what was done meanwhile', async () => {
    const cwd = scratch({ ...recordings(), log: '' });
    const log = join(cwd, 'log');
    const worker = startWorker(cwd, { stalledAfter: '60' }, { LABEL_ENGINE_LOG: log });
    const killed = startLabel(run(cwd, 'q.csv', { queue: url }));
    while (statSync(log).size === 0) await sleep(5);
    killed.child.kill('SIGKILL');
    await killed.ended;
    // The worker goes on alone with what was asked.
    await sleep(1000);
    await runLabel(run(cwd, 'q.csv', { queue: url }));
    // Rejects jobs named by chance: none but the crashing one, tried three times in each run, was labelled twice.
    const labelled = readFileSync(log, 'utf8').trim().split('\n');
    const others = labelled.filter((name) => !name.endsWith('r16.wav'));
    expect(others).toHaveLength(39);
    expect(new Set(others).size).toBe(39);
    expect(labelled.length - others.length).toBeLessThanOrEqual(6);
    worker.child.kill('SIGTERM');
    await worker.ended;
    await runLabel(run(cwd, 'one.csv'));
    expect(readFileSync(join(cwd, 'q.csv'), 'utf8')).toBe(
      readFileSync(join(cwd, 'one.csv'), 'utf8'),
    );
  }, 240_000);

  it('shares no work with hosts of other models', async () => {
    const cwd = scratch({ 'recs/a.wav': 'arc ok' });
    const other = startWorker(cwd, {}, { LABEL_ENGINE_MODELS: 'others' });
    const label = startLabel(run(cwd, 'q.csv', { queue: url }));
    let words = '';
    label.child.stderr?.on('data', (text) => {
      words += text;
    });
    while (!words.includes('0 workers; start arc-transfer work')) await sleep(20);
    label.child.kill('SIGTERM');
    other.child.kill('SIGTERM');
    expect((await label.ended).words).toContain('Stopped: 0 of 1');
    expect(await other.ended).not.toContain('done');
  }, 240_000);

  it('ends with an error, not in waiting for ever, when the Redis goes away', async () => {
    const cwd = scratch({ 'recs/a.wav': 'arc ok', 'recs/b.wav': 'arc ok 60000', log: '' });
    const port = await freePort();
    const own = await startRedis(port);
    const options = { queue: `redis://127.0.0.1:${port}`, queuePatience: '1' };
    const log = join(cwd, 'log');
    const worker = startWorker(cwd, options, { LABEL_ENGINE_LOG: log });
    const label = startLabel(run(cwd, 'q.csv', options));
    while (!readFileSync(log, 'utf8').includes('b.wav')) await sleep(5);
    own.disconnect();
    // Rejects a client that tries again for ever, and a worker that waits for its input of a minute.
    const ended = await label.ended;
    expect([ended.status, ended.words]).toEqual([1, expect.stringContaining('[queue-lost]')]);
    expect(await worker.ended).toContain('[queue-lost]');
    expect(statSync(join(cwd, 'q.csv.journal')).size).toBeGreaterThan(0);
  }, 240_000);

  it('says plainly that the password is wrong or nobody answers, and never shows a password', async () => {
    const cwd = scratch({ 'recs/a.wav': 'arc ok' });
    const wrong = await runLabel(
      run(cwd, 'q.csv', { queue: url }, { ARC_TRANSFER_QUEUE_PASSWORD: 'wr0ng' }),
    );
    expect([wrong.status, wrong.words]).toEqual([
      1,
      expect.stringMatching(/WRONGPASS.*\[no-queue\]/),
    ]);
    expect(wrong.words).not.toContain('wr0ng');
    const nobody = await runLabel(
      run(cwd, 'q.csv', { queue: `redis://127.0.0.1:${await freePort()}` }),
    );
    expect(nobody.words).toMatch(/ECONNREFUSED.*\[no-queue\]/);
  }, 240_000);
});
