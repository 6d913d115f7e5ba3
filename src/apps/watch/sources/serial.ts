import { execFile } from 'node:child_process';
import { constants, createReadStream, open } from 'node:fs';
import type { Readable } from 'node:stream';
import { ReadStream } from 'node:tty';
import { promisify } from 'node:util';
import { ArcError } from '../../../core/index.js';
import { onAbort } from './until-aborted.js';

/**
 * The bytes of a serial line, set to raw mode by the system's own `stty` (`mode` on Windows). The line itself
 * is opened read-only: nothing is ever sent to what hangs on it.
 *
 * @throws ArcError `cannot-open-serial`
 */
export async function* serialBytes(
  device: string,
  baud: number,
  signal: AbortSignal,
): AsyncGenerator<Uint8Array> {
  let release: (() => void) | undefined;
  try {
    const run = promisify(execFile);
    if (process.platform === 'win32') await run('mode', [device, `BAUD=${baud}`, 'DATA=8']);
    else {
      const flag = process.platform === 'linux' ? '-F' : '-f';
      await run('stty', [flag, device, String(baud), 'raw', '-echo', 'clocal']);
    }
    const line = await openLine(device);
    release = onAbort(signal, () => line.destroy());
    yield* line;
  } catch (error) {
    // A line that is unplugged gives an error of input and output: lost, like an end.
    if ((error as { code?: unknown }).code === 'EIO') return;
    throw cannotOpen(device, error);
  } finally {
    release?.();
  }
}

/** As a terminal and not as a file: a file read of a silent line could not be given up, and would hold up the end. */
async function openLine(device: string): Promise<Readable> {
  if (process.platform === 'win32') return createReadStream(`\\\\.\\${device}`);
  const { O_RDONLY, O_NOCTTY, O_NONBLOCK } = constants;
  const fd = await promisify(open)(device, O_RDONLY | O_NOCTTY | O_NONBLOCK);
  return new ReadStream(fd);
}

function cannotOpen(device: string, error: unknown): ArcError {
  const why = error instanceof Error ? error.message.trim() : String(error);
  return new ArcError({
    code: 'cannot-open-serial',
    what: `The serial line ${device} cannot be used: ${why}.`,
    expected: 'a serial device that this user may read, such as /dev/ttyUSB0 or COM3',
    todo: 'Check the name, the plug and the rights (on Linux often the group dialout).',
    cause: error,
  });
}
