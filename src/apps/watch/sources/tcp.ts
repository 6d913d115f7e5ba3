import { connect as open } from 'node:net';
import { ArcError } from '../../../core/index.js';
import { onAbort } from './until-aborted.js';

const CONNECT_MS = 5000;

/**
 * The bytes that a TCP server sends, such as a logger on the network.
 *
 * @throws ArcError `bad-address`, `cannot-connect`
 */
export async function* tcpBytes(address: string, signal: AbortSignal): AsyncGenerator<Uint8Array> {
  const { host, port } = parseAddress(address);
  const socket = open({ host, port });
  const release = onAbort(signal, () => socket.destroy());
  try {
    await new Promise<void>((resolve, reject) => {
      socket.setTimeout(CONNECT_MS, () => reject(new Error(`no answer within ${CONNECT_MS} ms`)));
      socket.once('connect', resolve);
      socket.once('error', reject);
      socket.once('close', () => reject(new Error('the connection was closed')));
    }).catch((error: unknown) => {
      throw cannotConnect(address, error);
    });
    socket.setTimeout(0);
    // A peer that vanished without a word is noticed by the system's probes.
    socket.setKeepAlive(true, 5000);
    yield* socket;
  } finally {
    release();
    socket.destroy();
  }
}

/** Reads `tcp://host:port`. @throws ArcError `bad-address` */
export function parseAddress(address: string): { host: string; port: number } {
  const match = /^tcp:\/\/(\[[0-9a-f:]+\]|[^:/\s]+):(\d{1,5})\/?$/i.exec(address);
  const port = Number(match?.[2]);
  if (match && port > 0 && port < 65_536) return { host: match[1]!.replaceAll(/[[\]]/g, ''), port };
  throw new ArcError({
    code: 'bad-address',
    what: `"${address}" is not understood.`,
    expected: 'tcp://host:port, such as tcp://192.168.0.20:5025',
    todo: 'Correct the address.',
  });
}

function cannotConnect(address: string, error: unknown): ArcError {
  const why = error instanceof Error ? error.message : String(error);
  return new ArcError({
    code: 'cannot-connect',
    what: `${address} cannot be reached: ${why}.`,
    expected: 'a server that sends rows of time,voltage,current',
    todo: 'Check the address, the cable and that the logger is on.',
    cause: error,
  });
}
