import { open, rename, rm, stat } from 'node:fs/promises';
import { ArcError } from '../../core/index.js';
import { stdoutIsOpen, writeOut } from './output.js';

/** Where data goes. */
export interface Sink {
  write(data: string | Uint8Array): Promise<void>;
  /** False once nobody reads any more. */
  isOpen(): boolean;
  /** Ends the output; `keep` false removes what was begun. */
  close(keep: boolean): Promise<void>;
}

/** Stdout. */
export function stdoutSink(): Sink {
  return { write: writeOut, isOpen: stdoutIsOpen, close: async () => {} };
}

/**
 * A file that appears under its name only when complete, so that nobody reads a half-written one.
 *
 * @throws ArcError `file-exists` unless `overwrite`, `cannot-write` when the folder refuses.
 */
export async function fileSink(path: string, overwrite: boolean): Promise<Sink> {
  const partial = `${path}.${process.pid}.partial`;
  if (!overwrite && (await exists(path))) throw fileExists(path);
  const file = await open(partial, 'wx').catch((error: unknown) => {
    throw cannotWrite(path, error);
  });
  return {
    write: async (data) => {
      await file.appendFile(data).catch((error: unknown) => {
        throw cannotWrite(path, error);
      });
    },
    isOpen: () => true,
    close: async (keep) => {
      await file.close();
      if (keep) await rename(partial, path);
      else await rm(partial, { force: true });
    },
  };
}

async function exists(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined)) !== undefined;
}

function fileExists(path: string): ArcError {
  return new ArcError({
    code: 'file-exists',
    what: `${path} is there already.`,
    expected: 'the name of a new file',
    todo: 'Choose another name, or pass --overwrite.',
  });
}

function cannotWrite(path: string, error: unknown): ArcError {
  const why = error instanceof Error ? error.message : String(error);
  return new ArcError({
    code: 'cannot-write',
    what: `${path} cannot be written: ${why}.`,
    expected: 'a folder with room that this user may write to',
    todo: 'Choose another place with --out.',
    cause: error,
  });
}
