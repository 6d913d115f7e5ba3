import { SCHEMA_VERSION } from '../../../analysis/result/index.js';
import { ArcError, fingerprint, TOOL_VERSION } from '../../../core/index.js';
import { type QueueAddress, sayAddress } from './address.js';

export type Bull = typeof import('bullmq');

const CONNECT_MS = 10_000;

/** The queue library, which is needed by nobody else. @throws ArcError `no-queue-package`. */
export async function loadBull(): Promise<Bull> {
  try {
    return await import('bullmq');
  } catch (cause) {
    throw new ArcError({
      code: 'no-queue-package',
      what: 'The package "bullmq" (or "ioredis", which it needs) is not installed.',
      expected: 'both beside this package',
      todo: 'Run: npm install bullmq ioredis',
      cause,
    });
  }
}

/**
 * One queue for each version of the tool with its models: hosts that would answer differently never
 * share work.
 */
export function queueName(models: string): string {
  return `arc-transfer-label-${fingerprint({ TOOL_VERSION, SCHEMA_VERSION, models }).slice(0, 8)}`;
}

/** Something of the library that connects to Redis. */
interface Connecting {
  on(event: 'error', listener: (error: Error) => void): unknown;
  waitUntilReady(): Promise<unknown>;
}

/**
 * Asks once whether Redis answers, without the patience that a running batch has.
 *
 * @throws ArcError `no-queue` when it does not answer, or refuses.
 */
export async function probe(address: QueueAddress): Promise<void> {
  const { Redis } = await import('ioredis');
  const redis = new Redis({
    ...address,
    lazyConnect: true,
    connectTimeout: CONNECT_MS,
    commandTimeout: CONNECT_MS,
    retryStrategy: () => null,
  });
  // What goes wrong comes out of the calls below too; without a listener it would also be printed.
  let said = '';
  redis.on('error', (error: Error) => {
    said = error.message;
  });
  try {
    await redis.connect();
    await redis.ping();
  } catch (error) {
    throw noQueue(address, said || (error instanceof Error ? error.message : String(error)));
  } finally {
    redis.disconnect();
  }
}

/** Waits until all are ready, and says later troubles once each time they change; the client goes on trying. */
export async function connected(all: readonly Connecting[], address: QueueAddress): Promise<void> {
  let last = '';
  for (const one of all) {
    one.on('error', (error) => {
      const text = error.message || String((error as { code?: string }).code ?? error.name);
      if (text !== last) process.stderr.write(`${sayAddress(address)}: ${text}\n`);
      last = text;
    });
  }
  await Promise.all(all.map((one) => one.waitUntilReady()));
}

function noQueue(address: QueueAddress, why: string): ArcError {
  return new ArcError({
    code: 'no-queue',
    what: `${sayAddress(address)} cannot be used: ${why}.`,
    expected: 'a Redis (5 or newer) that answers and takes the password',
    todo: 'Check address, password and firewall; redis-cli -h <host> ping should say PONG.',
  });
}
