import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { connect } from 'mqtt';

/** Where the broker is on Debian; null when it is not installed. */
export const MOSQUITTO = ['/usr/sbin/mosquitto', 'mosquitto'].find(
  (program) => spawnSync(program, ['-h']).error === undefined,
);

/** A port that was free a moment ago. */
export function freePort(): Promise<number> {
  const server = createServer();
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
}

/** Starts a broker of our own on loopback; `extra` are lines of its configuration. */
export async function startBroker(
  folder: string,
  port: number,
  extra: readonly string[] = [],
): Promise<ChildProcess> {
  const config = join(folder, `mosquitto-${port}.conf`);
  const lines = [`listener ${port} 127.0.0.1`, ...extra];
  if (!extra.some((line) => line.startsWith('allow_anonymous'))) lines.push('allow_anonymous true');
  await writeFile(config, `${lines.join('\n')}\n`);
  const child = spawn(MOSQUITTO!, ['-c', config], { stdio: 'ignore' });
  await answering(port);
  return child;
}

async function answering(port: number): Promise<void> {
  const { connect: open } = await import('node:net');
  for (let i = 0; i < 100; i++) {
    const there = await new Promise<boolean>((resolve) => {
      const socket = open(port, '127.0.0.1', () => resolve(true)).on('error', () => resolve(false));
      socket.on('close', () => {});
      setTimeout(() => socket.destroy(), 300);
    });
    if (there) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('The broker does not answer.');
}

/** Stops a broker and waits until it is gone. */
export async function stopBroker(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  await gone;
}

/** Everything published below a prefix from now on; `subscriptions` counts those to brokers that restarted too. */
export async function listen(url: string, prefix: string, options = {}) {
  const heard: { topic: string; text: string; retain: boolean }[] = [];
  const client = connect(url, { reconnectPeriod: 200, ...options });
  client.on('message', (topic, payload, packet) =>
    heard.push({ topic, text: payload.toString(), retain: packet.retain }),
  );
  const ears = { heard, subscriptions: 0, end: () => client.endAsync(true) };
  client.on('connect', () => {
    client.subscribe(`${prefix}/#`, { qos: 1 }, (error) => {
      if (!error) ears.subscriptions++;
    });
  });
  await until(() => ears.subscriptions > 0);
  return ears;
}

/** Waits until something holds. */
export async function until(holds: () => boolean | Promise<boolean>, ms = 10_000): Promise<void> {
  const endMs = Date.now() + ms;
  while (!(await holds())) {
    if (Date.now() > endMs) throw new Error('It did not come to pass in time.');
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
