import { createWriteStream } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { ArcError } from '../core/index.js';

/** Largest input taken from a pipe: formats with an index at their end need it on disk. */
export const SPOOL_LIMIT_BYTES = 4 * 1024 ** 3;

/** A pipe copied to disk, with a way to remove the copy. */
export interface Spool {
  path: string;
  remove(): Promise<void>;
}

/**
 * Copies a stream to a temporary file, because a pipe cannot be read twice or out of order.
 *
 * @throws ArcError `stdin-too-long` above the limit; the copy is removed on any error.
 */
export async function spool(stream: Readable, limitBytes = SPOOL_LIMIT_BYTES): Promise<Spool> {
  const folder = await mkdtemp(join(tmpdir(), 'arc-transfer-'));
  const remove = (): Promise<void> => rm(folder, { recursive: true, force: true });
  const path = join(folder, 'stdin');
  try {
    await pipeline(stream, bounded(limitBytes), createWriteStream(path, { mode: 0o600 }));
    return { path, remove };
  } catch (error) {
    await remove();
    throw error;
  }
}

function bounded(limitBytes: number) {
  return async function* (source: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
    let total = 0;
    for await (const chunk of source) {
      total += chunk.length;
      if (total > limitBytes) {
        throw new ArcError({
          code: 'stdin-too-long',
          what: `Stdin gave more than ${limitBytes} bytes.`,
          expected: 'a recording that ends, within that size',
          todo: 'Write it to a file and name the file.',
        });
      }
      yield chunk;
    }
  };
}
