import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** Up to here the browser's own digest, which wants all bytes at once, is worth its memory. */
const AT_ONCE = 1 << 25;

/** SHA-256 of a file in hexadecimal: by the browser where it has one, else piece by piece. */
export async function fileHash(file: Blob): Promise<string> {
  // Absent without a secure context.
  const native = globalThis.crypto.subtle as SubtleCrypto | undefined;
  if (native && file.size <= AT_ONCE)
    return bytesToHex(new Uint8Array(await native.digest('SHA-256', await file.arrayBuffer())));
  const digest = sha256.create();
  const step = 1 << 20;
  for (let offset = 0; offset < file.size; offset += step)
    digest.update(new Uint8Array(await file.slice(offset, offset + step).arrayBuffer()));
  return bytesToHex(digest.digest());
}
