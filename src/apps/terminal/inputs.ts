import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { ArcError, isArcError } from '../../core/index.js';
import { fileError } from '../../files/file-source.js';

/** How stdin is named on the command line. */
export const STDIN = '-';

/** One thing to read. Files found in a folder may turn out to be no recordings; named ones may not. */
export interface Input {
  path: string;
  origin: 'named' | 'folder' | 'pipe';
}

/** An input that cannot even be listed, with the reason; it becomes a `failed` result. */
export interface LostInput {
  path: string;
  origin: 'lost';
  error: unknown;
}

/**
 * Files as given, folders as the files in them (and below, in order of name; hidden ones left out),
 * `-` as stdin, and named pipes as pipes. The order of the arguments is kept.
 */
export async function listInputs(given: readonly string[]): Promise<(Input | LostInput)[]> {
  const lists = await Promise.all(given.map(listOne));
  if (given.filter((one) => one === STDIN).length > 1) {
    throw new ArcError({
      code: 'stdin-twice',
      what: 'Stdin (-) was named more than once.',
      expected: 'it at most once',
      todo: 'Leave one of them out.',
    });
  }
  return lists.flat();
}

async function listOne(path: string): Promise<(Input | LostInput)[]> {
  if (path === STDIN) return [{ path, origin: 'pipe' }];
  try {
    const stats = await stat(path);
    if (stats.isFIFO()) return [{ path, origin: 'pipe' }];
    if (!stats.isDirectory()) return [{ path, origin: 'named' }];
    const files = await listFolder(path);
    if (files.length === 0) throw emptyFolder(path);
    return files;
  } catch (error) {
    return [lost(path, error)];
  }
}

function lost(path: string, error: unknown): LostInput {
  return { path, origin: 'lost', error: isArcError(error) ? error : fileError(path, error) };
}

/**
 * All files below a folder. Links to files are followed, links to folders are not (they may loop). A folder in it
 * that cannot be listed is one lost input.
 */
async function listFolder(folder: string): Promise<(Input | LostInput)[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const files: (Input | LostInput)[] = [];
  for (const entry of entries) {
    if (entry.name.startsWith('.')) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory())
      files.push(...(await listFolder(path).catch((error) => [lost(path, error)])));
    else if (entry.isFile() || (entry.isSymbolicLink() && (await isFile(path))))
      files.push({ path, origin: 'folder' });
  }
  return files;
}

async function isFile(path: string): Promise<boolean> {
  return (await stat(path).catch(() => undefined))?.isFile() ?? false;
}

function emptyFolder(path: string): ArcError {
  return new ArcError({
    code: 'empty-folder',
    what: `The folder ${path} holds no files.`,
    expected: 'at least one recording in it',
    todo: 'Check the path.',
  });
}
