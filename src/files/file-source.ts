import { constants, access as mayList } from 'node:fs/promises';
import { ArcError } from '../core/index.js';
import type { ByteSource } from '../recording/index.js';
import { FILE_ACCESS, type OpenFile } from './file-access.js';

/** A file opened for reading. `close` it when done; closing twice does no harm. */
export interface FileSource extends ByteSource {
  close(): Promise<void>;
}

/**
 * Opens a regular file. It is read piece by piece and never as a whole; its size is taken once, so that a
 * file still growing is read up to what was there.
 *
 * @throws ArcError `file-not-found`, `is-directory`, `no-permission`, `not-a-file`, `file-shrank`,
 * `read-failed`.
 */
export async function openFileSource(path: string, access = FILE_ACCESS): Promise<FileSource> {
  const refuse = (error: unknown): never => {
    throw fileError(path, error);
  };
  // Looked at before it is opened: opening a named pipe waits until somebody writes to it.
  const kind = await access.stat(path).catch(refuse);
  if (kind.isDirectory()) {
    // A folder that may not be listed is another trouble than a folder in the place of a file.
    await mayList(path, constants.R_OK | constants.X_OK).catch(refuse);
    refuse({ code: 'EISDIR' });
  }
  if (!kind.isFile()) throw notAFile(path);
  const handle = await access.open(path).catch(refuse);
  try {
    return fromHandle(handle, path, (await handle.stat()).size);
  } catch (error) {
    await handle.close();
    throw error;
  }
}

function fromHandle(handle: OpenFile, path: string, size: number): FileSource {
  let buffer = new Uint8Array(0);
  return {
    name: path,
    size,
    async read(offset, length) {
      const wanted = Math.max(0, Math.min(length, size - offset));
      if (buffer.length < wanted) buffer = new Uint8Array(wanted);
      let filled = 0;
      while (filled < wanted) {
        const { bytesRead } = await handle
          .read(buffer, filled, wanted - filled, offset + filled)
          .catch((error: unknown) => {
            throw fileError(path, error);
          });
        if (bytesRead === 0) throw shrank(path, size, offset + filled);
        filled += bytesRead;
      }
      return buffer.subarray(0, filled);
    },
    currentSize: async () => (await handle.stat()).size,
    close: () => handle.close(),
  };
}

/** An {@link ArcError} for what the operating system said about a path. */
export function fileError(path: string, error: unknown): ArcError {
  const code = String((error as { code?: unknown }).code ?? error);
  const known: Record<string, [code: string, what: string, expected: string, todo: string]> = {
    ENOENT: ['file-not-found', 'does not exist', 'the path of a recording', 'Check the spelling.'],
    EISDIR: ['is-directory', 'is a directory', 'a recording', 'Name the files inside it.'],
    EACCES: [
      'no-permission',
      'may not be read by you',
      'a readable file',
      'Ask for the right to read it.',
    ],
    EPERM: [
      'no-permission',
      'may not be read by you',
      'a readable file',
      'Ask for the right to read it.',
    ],
    EMFILE: [
      'too-many-files',
      'could not be opened: too many files are open',
      'fewer at once',
      'Run with fewer workers.',
    ],
  };
  const [name, what, expected, todo] = known[code] ?? [
    'read-failed',
    `could not be read (${code})`,
    'a readable file',
    'Copy the file to a sound disk and try again.',
  ];
  return new ArcError({ code: name, what: `${path} ${what}.`, expected, todo, cause: error });
}

function notAFile(path: string): ArcError {
  return new ArcError({
    code: 'not-a-file',
    what: `${path} is a pipe or device, not a file.`,
    expected: 'a file, or data on standard input',
    todo: 'Send it to standard input and give “-” as the input.',
  });
}

function shrank(path: string, size: number, at: number): ArcError {
  return new ArcError({
    code: 'file-shrank',
    what: `${path} became shorter while it was read (${size} bytes at the start, now ends at ${at}).`,
    expected: 'a file that stays as it is',
    todo: 'Wait until nothing writes to it, then run again.',
  });
}
