import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { FILE_ACCESS } from '../../files/file-access.js';

/**
 * What tells cheaply that a file is unchanged. The time of the last change of its entry is in it too:
 * unlike the time of modification, no program can set that back.
 */
export interface FileKey {
  size: number;
  /** Nanoseconds since 1970, as text. */
  modified: string;
  changed: string;
}

/** The key of a file now; null when it cannot be asked. */
export async function fileKey(path: string): Promise<FileKey | null> {
  const stats = await FILE_ACCESS.stat(path).catch(() => null);
  if (stats === null || !stats.isFile()) return null;
  return {
    size: Number(stats.size),
    modified: String(stats.mtimeNs),
    changed: String(stats.ctimeNs),
  };
}

export function sameKey(a: FileKey, b: FileKey): boolean {
  return a.size === b.size && a.modified === b.modified && a.changed === b.changed;
}

/** SHA-256 of a file, hexadecimal; null when it cannot be read. */
export async function fileHash(path: string): Promise<string | null> {
  const digest = createHash('sha256');
  try {
    await pipeline(createReadStream(path), digest);
    return digest.digest('hex');
  } catch {
    return null;
  }
}
