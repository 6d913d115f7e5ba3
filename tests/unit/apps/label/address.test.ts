import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { defaultSettings } from '../../../../src/analysis/index.js';
import { readQueueAddress } from '../../../../src/apps/label/queue/address.js';
import { parseJob } from '../../../../src/apps/label/queue/job.js';
import { scratch } from '../../../support/scratch.js';

describe('readQueueAddress', () => {
  it('reads host, port, database, user and TLS; the password from file or environment', async () => {
    expect(await readQueueAddress('redis://h', undefined, {})).toMatchObject({
      host: 'h',
      port: 6379,
      db: 0,
    });
    const folder = scratch({ p: 'from file\n' });
    const env = { ARC_TRANSFER_QUEUE_PASSWORD: 'from env' };
    expect(
      await readQueueAddress('rediss://me@[::1]:7000/3', join(folder, 'p'), env),
    ).toMatchObject({
      host: '::1',
      port: 7000,
      db: 3,
      username: 'me',
      password: 'from file',
      tls: {},
    });
    expect((await readQueueAddress('redis://h', undefined, env)).password).toBe('from env');
  });

  it('refuses a password in the URL and repeats it nowhere', async () => {
    // Rejects a message that puts the secret into logs.
    for (const url of ['redis://:s3cret@h', 'redis://u:s3cret@h:1/2', 'redis//u:s3cret@h']) {
      const error = await readQueueAddress(url, undefined, {}).catch((one: Error) => one);
      expect(error).toMatchObject({ name: 'ArcError' });
      expect(
        JSON.stringify([(error as Error).message, (error as Error).stack, error]),
      ).not.toContain('s3cret');
    }
  });

  it.each(['http://h', 'h:6379', 'redis://', 'redis://h/x', 'redis://h?db=1'])(
    'refuses %s',
    async (url) => {
      await expect(readQueueAddress(url, undefined, {})).rejects.toMatchObject({
        code: 'bad-queue',
      });
    },
  );
});

describe('parseJob', () => {
  const task = { path: 'a.wav', origin: 'named', setup: { gas: 'C1' }, fingerprint: 'f' };
  const plan = {
    settings: defaultSettings(),
    reading: { channelMap: { voltage: 1 } },
    windows: false,
  };

  it('takes what label puts in, through JSON', () => {
    expect(parseJob(JSON.parse(JSON.stringify({ task, plan })))).toEqual({ task, plan });
  });

  it.each([
    ['a module to load', { task, plan, engineUrl: 'file:///evil.js' }],
    ['an unknown setting', { task, plan: { ...plan, settings: { evil: 1 } } }],
    [
      'a setting out of range',
      { task, plan: { ...plan, settings: { ...defaultSettings(), meanDwellS: 1e9 } } },
    ],
    ['no path', { task: { ...task, path: '' }, plan }],
    ['nothing', null],
  ])('refuses %s', (_, data) => {
    expect(() => parseJob(data)).toThrow();
  });
});
