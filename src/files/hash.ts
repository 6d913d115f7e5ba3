import { createHash } from 'node:crypto';
import type { ByteSource } from '../recording/index.js';

/** SHA-256 of the bytes that were there when the file was opened. */
export async function hash(source: ByteSource): Promise<string> {
  const digest = createHash('sha256');
  const step = 1 << 20;
  for (let offset = 0; offset < source.size; ) {
    const bytes = await source.read(offset, Math.min(step, source.size - offset));
    if (bytes.length === 0) break;
    digest.update(bytes);
    offset += bytes.length;
  }
  return digest.digest('hex');
}
