import type { ChildProcess } from 'node:child_process';
import { spawnSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { WatchEvent, WatchState } from '../../../../src/apps/watch/events.js';
import { readMqtt } from '../../../../src/apps/watch/mqtt/options.js';
import { type MqttPublisher, openMqtt } from '../../../../src/apps/watch/mqtt/publisher.js';
import { noLosses } from '../../../../src/apps/watch/sources/types.js';
import {
  freePort,
  listen,
  MOSQUITTO,
  startBroker,
  stopBroker,
  until,
} from '../../../support/mosquitto.js';
import { sampleResult } from '../../../support/sample-result.js';

if (!MOSQUITTO)
  process.stderr.write('mosquitto is not installed: the tests of MQTT are skipped.\n');

let folder: string;
const ends: (() => Promise<unknown>)[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'arc-mqtt-'));
});
afterEach(async () => {
  for (const end of ends.splice(0).reverse()) await end();
  await rm(folder, { recursive: true, force: true });
});

const STATE: WatchState = {
  name: 'test',
  timeS: 9,
  arcOn: false,
  signal: 'ok',
  weld: 1,
  modes: null,
  eventRateHz: null,
  expected: 'spray',
  alarm: true,
  alarms: 1,
  losses: noLosses(),
  strip: [],
};

function weld(number: number): WatchEvent {
  const result = sampleResult();
  const { status, mode, confidence } = result;
  return { event: 'weld', timeS: 9, weld: number, startS: 1, status, mode, confidence, result };
}

async function publisher(raw: Record<string, unknown>): Promise<MqttPublisher> {
  const options = await readMqtt(
    { mqttOutbox: join(folder, 'outbox'), mqttTopic: 'cell', ...raw },
    undefined,
  );
  const made = await openMqtt(options!, () => {});
  ends.push(() => made.close());
  return made;
}

async function broker(port: number, extra: string[] = []): Promise<ChildProcess> {
  const child = await startBroker(folder, port, extra);
  ends.push(() => stopBroker(child));
  return child;
}

const waiting = async () => (await readdir(join(folder, 'outbox'))).length;

describe.skipIf(!MOSQUITTO)('publishing to a broker', () => {
  it('keeps the state for whoever comes later and gives each change once', async () => {
    const port = await freePort();
    await broker(port);
    const url = `mqtt://127.0.0.1:${port}`;
    const early = await listen(url, 'cell');
    ends.push(early.end);
    const mqtt = await publisher({ mqtt: url });
    await until(() =>
      early.heard.some((one) => one.topic === 'cell/online' && one.text === 'true'),
    );
    await mqtt.tell({ event: 'signal-lost', timeS: 3, why: 'test' }, STATE);
    await mqtt.tell(weld(1), STATE);
    await until(() => early.heard.some((one) => one.topic === 'cell/weld'));
    const late = await listen(url, 'cell');
    ends.push(late.end);
    await until(() => late.heard.some((one) => one.topic === 'cell/state'));
    const state = late.heard.find((one) => one.topic === 'cell/state')!;
    expect(state.retain).toBe(true);
    expect(JSON.parse(state.text)).toMatchObject({ alarm: true, weld: 1, expected: 'spray' });
    expect(late.heard.some((one) => one.topic === 'cell/change' || one.topic === 'cell/weld')).toBe(
      false,
    );
    const changes = early.heard.filter((one) => one.topic === 'cell/change');
    expect(changes.map((one) => JSON.parse(one.text).event)).toEqual(['signal-lost', 'weld']);
    const sent = JSON.parse(early.heard.find((one) => one.topic === 'cell/weld')!.text);
    expect(sent).toEqual({ weld: 1, result: sampleResult() });
  });

  // Rejects a publisher that drops results while the broker is away, or keeps them in memory only.
  it('loses no weld over a broker that restarts, nor over a restart of its own', async () => {
    const port = await freePort();
    const url = `mqtt://127.0.0.1:${port}`;
    let running = await broker(port);
    const first = await publisher({ mqtt: url });
    const ears = await listen(url, 'cell');
    ends.push(ears.end);
    await first.tell(weld(1), STATE);
    await until(() => ears.heard.some((one) => one.topic === 'cell/weld'));
    await until(async () => (await waiting()) === 0);
    await stopBroker(running);
    await first.tell(weld(2), STATE);
    await first.tell(weld(3), STATE);
    expect(await waiting()).toBe(2);
    await first.close();
    expect(await waiting()).toBe(2);
    running = await broker(port);
    await until(() => ears.subscriptions > 1);
    await publisher({ mqtt: url });
    const numbers = () =>
      ears.heard.filter((one) => one.topic === 'cell/weld').map((one) => JSON.parse(one.text).weld);
    await until(() => numbers().includes(3));
    expect([...new Set(numbers())]).toEqual([1, 2, 3]);
    await until(async () => (await waiting()) === 0);
  });

  it('is told what to expect', async () => {
    const port = await freePort();
    await broker(port);
    const url = `mqtt://127.0.0.1:${port}`;
    const mqtt = await publisher({ mqtt: url });
    const told: string[] = [];
    mqtt.onExpect((text) => told.push(text));
    const { connect } = await import('mqtt');
    const other = connect(url);
    ends.push(() => other.endAsync(true));
    await until(async () => {
      await other.publishAsync('cell/expect', 'globular', { qos: 1 });
      return told.length > 0;
    });
    expect(told[0]).toBe('globular');
  });

  it('speaks TLS to the authority it was given, with a name and password', async () => {
    const made = spawnSync('openssl', [
      ...['req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-days', '2', '-subj', '/CN=localhost'],
      ...['-addext', 'subjectAltName=DNS:localhost', '-keyout', join(folder, 'key.pem')],
      ...['-out', join(folder, 'cert.pem')],
    ]);
    expect(made.status).toBe(0);
    const passwords = join(folder, 'passwords');
    expect(spawnSync('mosquitto_passwd', ['-b', '-c', passwords, 'cell-3', 'secret']).status).toBe(
      0,
    );
    const port = await freePort();
    // The broker gives its rights up when started by root and must still read what it was given.
    await broker(port, [
      `certfile ${join(folder, 'cert.pem')}`,
      `keyfile ${join(folder, 'key.pem')}`,
      `password_file ${passwords}`,
      'allow_anonymous false',
      'user root',
    ]);
    const credentials = join(folder, 'credentials');
    await writeFile(credentials, 'cell-3\nsecret\n', { mode: 0o600 });
    const ca = join(folder, 'cert.pem');
    const url = `mqtts://localhost:${port}`;
    const ears = await listen(url, 'cell', {
      ca: await readFile(ca),
      username: 'cell-3',
      password: 'secret',
    });
    ends.push(ears.end);
    const mqtt = await publisher({ mqtt: url, mqttCa: ca, mqttCredentials: credentials });
    await mqtt.tell(weld(1), STATE);
    await until(() => ears.heard.some((one) => one.topic === 'cell/weld'));
    await until(async () => (await waiting()) === 0);
  });
});

describe('what is stated about the broker', () => {
  it.each([
    [{ mqtt: 'http://x' }, 'bad-mqtt'],
    [{ mqtt: 'mqtt://name:secret@x' }, 'bad-mqtt'],
    [{ mqtt: 'mqtt://x', mqttTopic: 'a/#' }, 'bad-mqtt'],
    [{ mqtt: 'mqtt://x' }, 'mqtt-needs-outbox'],
    [{ mqtt: 'mqtt://x', mqttOutbox: 'o', mqttCa: '/nowhere/ca.pem' }, 'bad-mqtt-file'],
  ])('refuses %j', async (raw, code) => {
    await expect(readMqtt(raw, undefined)).rejects.toMatchObject({ code });
  });

  it('never repeats a password in the refusal', async () => {
    await expect(readMqtt({ mqtt: 'mqtt://name:hunter2@x' }, 'w')).rejects.toThrow(
      expect.objectContaining({ message: expect.not.stringContaining('hunter2') }),
    );
  });
});
