import {
  type BigIntStats,
  closeSync,
  fstatSync,
  openSync,
  readSync,
  type Stats,
  statSync,
} from 'node:fs';
import { open, stat } from 'node:fs/promises';
import { isMainThread } from 'node:worker_threads';

/** A file open for reading. `close` may be called twice. */
export interface OpenFile {
  read(
    into: Uint8Array,
    offset: number,
    length: number,
    position: number,
  ): Promise<{ bytesRead: number }>;
  stat(): Promise<Stats>;
  close(): Promise<void>;
}

/** The calls to the file system that reading a recording takes; each rejects with the system's error. */
export interface FileAccess {
  stat(path: string): Promise<BigIntStats>;
  open(path: string): Promise<OpenFile>;
}

/** Leaves the thread free for others while the disk is asked. */
export const SHARING_ACCESS: FileAccess = {
  stat: (path) => stat(path, { bigint: true }),
  open: (path) => open(path, 'r'),
};

/**
 * Asks the disk and waits. Of a short recording the way to another thread and back, a dozen times, costs
 * more than the reading itself.
 */
export const WAITING_ACCESS: FileAccess = {
  stat: async (path) => statSync(path, { bigint: true }),
  open: async (path) => {
    const fd = openSync(path, 'r');
    let closed = false;
    return {
      read: async (into, offset, length, position) => ({
        bytesRead: readSync(fd, into, offset, length, position),
      }),
      stat: async () => fstatSync(fd),
      close: async () => {
        if (closed) return;
        closed = true;
        closeSync(fd);
      },
    };
  },
};

/** In a thread of a batch, which does one recording at a time, nobody else would use the wait. */
export const FILE_ACCESS: FileAccess = isMainThread ? SHARING_ACCESS : WAITING_ACCESS;
