import type { RawSetup } from '../messages.js';
import type { Database, Run } from './database.js';

/**
 * Keeps a run with its file in one step: both or neither.
 * @throws what the browser says, `QuotaExceededError` where there is no more room
 */
export async function keepRun(database: Database, run: Run, file: Blob | null): Promise<void> {
  const change = database.transaction(['runs', 'files'], 'readwrite');
  const puts: Promise<unknown>[] = [change.objectStore('runs').put(run)];
  if (file) puts.push(change.objectStore('files').put(file, run.id));
  await Promise.all([...puts, change.done]);
}

/** All runs, newest first. */
export async function listRuns(database: Database): Promise<Run[]> {
  return (await database.getAllFromIndex('runs', 'createdMs')).reverse();
}

export async function fileOf(database: Database, id: string): Promise<Blob | undefined> {
  return database.get('files', id);
}

export async function dropRun(database: Database, id: string): Promise<void> {
  const change = database.transaction(['runs', 'files'], 'readwrite');
  await Promise.all([
    change.objectStore('runs').delete(id),
    change.objectStore('files').delete(id),
    change.done,
  ]);
}

/** Deletes everything this page has kept: runs, files, pieces and booths. */
export async function dropEverything(database: Database): Promise<void> {
  const names = ['runs', 'files', 'pieces', 'booths'] as const;
  const change = database.transaction(names, 'readwrite');
  await Promise.all([...names.map((name) => change.objectStore(name).clear()), change.done]);
}

/** The set-up last used in a booth; empty for a booth not known yet. */
export async function setupOf(database: Database, booth: string): Promise<RawSetup> {
  return (await database.get('booths', booth)) ?? {};
}

export async function keepSetup(database: Database, booth: string, setup: RawSetup): Promise<void> {
  await database.put('booths', setup, booth);
}

export async function boothNames(database: Database): Promise<string[]> {
  return (await database.getAllKeys('booths')).filter((one) => one !== '');
}

/** Bytes in use and bytes to be had, where the browser tells. */
export async function room(): Promise<{ usedBytes: number; allBytes: number } | null> {
  const estimate = await navigator.storage?.estimate?.();
  if (!estimate?.quota) return null;
  return { usedBytes: estimate.usage ?? 0, allBytes: estimate.quota };
}
