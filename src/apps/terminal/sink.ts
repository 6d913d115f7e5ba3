import { mkdir, open, rename, rm, stat, writeFile } from 'node:fs/promises';
import { ArcError } from '../../core/index.js';
import { stdoutIsOpen, writeOut } from './output.js';
import { spareInputs } from './spare-inputs.js';
import { cannotWrite, fileExists } from './write-errors.js';

/** Where data goes. */
export interface Sink {
  write(data: string | Uint8Array): Promise<void>;
  /** False once nobody reads any more. */
  isOpen(): boolean;
  /** Ends the output; `keep` false removes what was begun. */
  close(keep: boolean): Promise<void>;
}

export interface OutputRules {
  /** Whether a file of that name may be replaced. */
  overwrite: boolean;
  /** Every file that is read; none of them is ever replaced. */
  inputs: readonly string[];
}

/** Stdout. */
export function stdoutSink(): Sink {
  return { write: writeOut, isOpen: stdoutIsOpen, close: async () => {} };
}

/**
 * A file that appears under its name only when complete, so that nobody reads a half-written one.
 *
 * @throws ArcError `file-exists` unless `overwrite`, `output-is-input`, `cannot-write` when the folder refuses.
 */
export async function fileSink(path: string, rules: OutputRules): Promise<Sink> {
  await checkOutput(path, rules);
  const partial = `${path}.${process.pid}.partial`;
  const refuse = (error: unknown): never => {
    throw cannotWrite(path, error);
  };
  const file = await open(partial, 'wx').catch(refuse);
  return {
    write: async (data) => {
      await file.appendFile(data).catch(refuse);
    },
    isOpen: () => true,
    close: async (keep) => {
      await file.close();
      if (keep) await rename(partial, path).catch(refuse);
      else await rm(partial, { force: true });
    },
  };
}

/** Writes a small file at once, by the same rules; the folder above it must be there. @throws as {@link fileSink} */
export async function writeFileBy(
  path: string,
  data: string | Uint8Array,
  rules: OutputRules,
): Promise<void> {
  await checkOutput(path, rules);
  await writeFile(path, data).catch((error: unknown) => {
    throw cannotWrite(path, error);
  });
}

/** A folder and those above it. @throws ArcError `cannot-write`, `disk-full` */
export async function makeFolder(path: string): Promise<void> {
  await mkdir(path, { recursive: true }).catch((error: unknown) => {
    throw cannotWrite(path, error);
  });
}

async function checkOutput(path: string, { overwrite, inputs }: OutputRules): Promise<void> {
  const there = await stat(path).catch(() => undefined);
  if (!there) return;
  await spareInputs([path], inputs);
  if (there.isDirectory()) throw isFolder(path);
  if (!overwrite) throw fileExists(path);
}

function isFolder(path: string): ArcError {
  return new ArcError({
    code: 'cannot-write',
    what: `${path} is a folder.`,
    expected: 'the name of a file',
    todo: 'Name a file in it.',
  });
}
