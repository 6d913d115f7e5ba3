import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ArcError } from '../../../core/index.js';
import { sayShort } from '../words.js';

/** How and where to publish. */
export interface MqttOptions {
  url: string;
  /** First part of every topic. */
  prefix: string;
  /** Folder where results wait until the broker has acknowledged them. */
  outbox: string;
  username: string | undefined;
  password: string | undefined;
  ca: Buffer | undefined;
  cert: Buffer | undefined;
  key: Buffer | undefined;
}

type Raw = Readonly<Record<string, unknown>>;

/**
 * Credentials come from a file or the environment, never from the command line, which everybody on the
 * machine can read.
 *
 * @throws ArcError `bad-mqtt`, `mqtt-needs-outbox`, `bad-mqtt-file`
 */
export async function readMqtt(
  raw: Raw,
  welds: string | undefined,
): Promise<MqttOptions | undefined> {
  const url = text(raw['mqtt']);
  if (url === undefined) return undefined;
  const parsed = URL.canParse(url) ? new URL(url) : undefined;
  if (!parsed || !['mqtt:', 'mqtts:'].includes(parsed.protocol))
    throw bad(url, 'mqtt://host:port, or mqtts://host:port with TLS');
  if (parsed.username !== '' || parsed.password !== '')
    throw bad('with a name or password inside', 'an address without credentials');
  const prefix = text(raw['mqttTopic']) ?? 'arc-transfer';
  if (/[#+\0]|^\/|\/$/.test(prefix) || prefix === '') throw bad(prefix, 'a topic without # and +');
  const outbox =
    text(raw['mqttOutbox']) ?? (welds === undefined ? undefined : join(welds, 'outbox'));
  if (outbox === undefined) throw needsOutbox();
  const [username, password] = await credentials(text(raw['mqttCredentials']));
  const [ca, cert, key] = await Promise.all(
    ['mqttCa', 'mqttCert', 'mqttKey'].map((name) => fileOf(text(raw[name]))),
  );
  return { url, prefix, outbox, username, password, ca, cert, key };
}

/** A file of two lines, name and password; else `ARC_TRANSFER_MQTT_USER` and `ARC_TRANSFER_MQTT_PASSWORD`. */
async function credentials(file: string | undefined): Promise<(string | undefined)[]> {
  if (file === undefined)
    return [process.env['ARC_TRANSFER_MQTT_USER'], process.env['ARC_TRANSFER_MQTT_PASSWORD']];
  const [username = '', password] = (await fileOf(file))!.toString('utf8').split(/\r?\n/);
  return [username, password];
}

async function fileOf(path: string | undefined): Promise<Buffer | undefined> {
  if (path === undefined) return undefined;
  return readFile(path).catch((error: unknown) => {
    throw new ArcError({
      code: 'bad-mqtt-file',
      what: `${path} cannot be read: ${sayShort(error)}.`,
      expected: 'a file that this user may read',
      todo: 'Check the path and the rights.',
      cause: error,
    });
  });
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

function bad(given: string, wanted: string): ArcError {
  return new ArcError({
    code: 'bad-mqtt',
    what: `MQTT was given "${given}".`,
    expected: wanted,
    todo: 'Credentials belong into --mqtt-credentials <file> or the environment.',
  });
}

function needsOutbox(): ArcError {
  return new ArcError({
    code: 'mqtt-needs-outbox',
    what: '--mqtt was given without a folder where results can wait for the broker.',
    expected: '--welds <folder> or --mqtt-outbox <folder>',
    todo: 'Name a folder on a disk that survives a restart.',
  });
}
