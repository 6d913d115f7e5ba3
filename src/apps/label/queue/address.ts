import { readFile } from 'node:fs/promises';
import { ArcError } from '../../../core/index.js';

/** Where a Redis is, as its client takes it. */
export interface QueueAddress {
  host: string;
  port: number;
  db: number;
  username?: string;
  password?: string;
  tls?: Record<string, never>;
  /** Wait for a lost connection instead of giving up. */
  maxRetriesPerRequest: null;
}

/** Name of the variable that may hold the password. */
export const PASSWORD_VARIABLE = 'ARC_TRANSFER_QUEUE_PASSWORD';

/**
 * Reads `redis://host:6379/0` (`rediss://` for TLS, `redis://user@host` for a user). The password comes
 * from a file or from the environment: command lines can be read by everybody on a machine.
 *
 * @throws ArcError `bad-queue`, `password-in-url` (which does not repeat it), `bad-password-file`.
 */
export async function readQueueAddress(
  given: string,
  passwordFile: string | undefined,
  env: Readonly<Record<string, string | undefined>>,
): Promise<QueueAddress> {
  const url = URL.canParse(given) ? new URL(given) : undefined;
  if (url?.password) throw passwordInUrl(url);
  const db = url && /^\/?(\d{0,4})$/.exec(url.pathname)?.[1];
  if (!url || !/^rediss?:$/.test(url.protocol) || url.hostname === '' || db === undefined)
    throw badQueue(given);
  if (url.search !== '' || url.hash !== '') throw badQueue(given);
  const password =
    passwordFile === undefined ? env[PASSWORD_VARIABLE] : await readPassword(passwordFile);
  return {
    host: url.hostname.replace(/^\[|\]$/g, ''),
    port: url.port === '' ? 6379 : Number(url.port),
    db: Number(db),
    ...(url.username ? { username: decodeURIComponent(url.username) } : {}),
    ...(password ? { password } : {}),
    ...(url.protocol === 'rediss:' ? { tls: {} } : {}),
    maxRetriesPerRequest: null,
  };
}

/** How a queue is called in messages; never with its password. */
export function sayAddress(address: QueueAddress): string {
  return `Redis at ${address.host}:${address.port}`;
}

async function readPassword(path: string): Promise<string> {
  const text = await readFile(path, 'utf8').catch((error: unknown) => {
    throw badPasswordFile(path, error instanceof Error ? error.message : String(error));
  });
  const password = text.replace(/\r?\n$/, '');
  if (password === '') throw badPasswordFile(path, 'it is empty');
  return password;
}

function badPasswordFile(path: string, why: string): ArcError {
  return new ArcError({
    code: 'bad-password-file',
    what: `The password file ${path} cannot be used: ${why}.`,
    expected: 'a file that holds the password and nothing else',
    todo: `Correct --queue-password-file, or set ${PASSWORD_VARIABLE}.`,
  });
}

function passwordInUrl(url: URL): ArcError {
  return new ArcError({
    code: 'password-in-url',
    what: `--queue holds a password (for ${url.host}); everybody on this machine can read command lines.`,
    expected: 'a URL without a password',
    todo: `Change that password, and give it by --queue-password-file or in ${PASSWORD_VARIABLE}.`,
  });
}

function badQueue(given: string): ArcError {
  // What stands before an @ may be a secret that a typing error kept from being read as one.
  return new ArcError({
    code: 'bad-queue',
    what: `--queue was given "${given.replace(/.*@/, '…@')}".`,
    expected: 'a URL such as redis://127.0.0.1:6379 or rediss://user@queue.example:6380/2',
    todo: 'Correct the URL.',
  });
}
