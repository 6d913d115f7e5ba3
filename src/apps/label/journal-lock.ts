import { link, readFile, rm, writeFile } from 'node:fs/promises';
import { hostname } from 'node:os';
import { ArcError, isArcError } from '../../core/index.js';
import { cannotWrite } from './write-errors.js';

/**
 * Keeps two runs from writing one journal. A lock left behind by a process of this machine that is no
 * more is taken over; `release` gives it back.
 *
 * @throws ArcError `journal-in-use`, `cannot-write`.
 */
export async function lockJournal(journal: string): Promise<{ release(): Promise<void> }> {
  const path = `${journal}.lock`;
  // Written elsewhere first and then linked, so that no one ever sees a lock without its owner.
  const draft = `${path}.${process.pid}`;
  try {
    await writeFile(draft, JSON.stringify({ pid: process.pid, host: hostname() }));
    await take(draft, path);
  } catch (error) {
    throw isArcError(error) ? error : cannotWrite(path, error);
  } finally {
    // Where the folder is none, there is nothing to remove either.
    await rm(draft, { force: true }).catch(() => {});
  }
  return { release: () => rm(path, { force: true }) };
}

async function take(draft: string, path: string): Promise<void> {
  for (let attempt = 0; ; attempt++) {
    try {
      return await link(draft, path);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
    const owner = await ownerOf(path);
    if (attempt === 3 || owner.alive) throw inUse(path, owner.name);
    await rm(path, { force: true });
  }
}

async function ownerOf(path: string): Promise<{ alive: boolean; name: string }> {
  try {
    const { pid, host } = JSON.parse(await readFile(path, 'utf8')) as { pid: number; host: string };
    const name = `process ${pid} on ${host}`;
    return { name, alive: host !== hostname() || isAlive(pid) };
  } catch {
    // Gone meanwhile, or damaged.
    return { alive: false, name: 'another run' };
  }
}

function isAlive(pid: number): boolean {
  // Left by an earlier process that had the same number, as happens in containers.
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function inUse(path: string, owner: string): ArcError {
  return new ArcError({
    code: 'journal-in-use',
    what: `The journal is being written by ${owner}.`,
    expected: 'one run at a time for each --out',
    todo: `Wait for it or choose another --out. If that run is over, delete ${path}.`,
  });
}
