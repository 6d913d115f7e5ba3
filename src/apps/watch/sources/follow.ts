import { open, stat } from 'node:fs/promises';
import { fileError } from '../../../files/file-source.js';
import { pause } from './until-aborted.js';

const LOOK_MS = 100;
const READ_BYTES = 256 * 1024;

/**
 * The bytes of a file from its beginning on, as it grows. It ends when nothing has come for `idleEndS`, when
 * the file became shorter or was replaced (a new log), or when aborted.
 *
 * @throws ArcError `file-not-found` and what else the system says of the path.
 */
export async function* growingBytes(
  path: string,
  idleEndS: number,
  signal: AbortSignal,
): AsyncGenerator<Uint8Array> {
  const file = await open(path, 'r').catch((error: unknown) => {
    throw fileError(path, error);
  });
  try {
    const { ino } = await file.stat();
    let at = 0;
    let idleMs = 0;
    while (!signal.aborted && idleMs < idleEndS * 1000) {
      const { bytesRead, buffer } = await file.read(new Uint8Array(READ_BYTES), 0, READ_BYTES, at);
      if (bytesRead > 0) {
        at += bytesRead;
        idleMs = 0;
        yield buffer.subarray(0, bytesRead);
        continue;
      }
      const now = await stat(path).catch(() => undefined);
      if (now === undefined || now.ino !== ino || now.size < at) return;
      await pause(LOOK_MS, signal);
      idleMs += LOOK_MS;
    }
  } finally {
    await file.close();
  }
}
