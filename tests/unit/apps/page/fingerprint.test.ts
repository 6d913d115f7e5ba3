import { createHash } from 'node:crypto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { fileHash } from '../../../../src/apps/page/worker/fingerprint.js';

afterEach(() => void vi.unstubAllGlobals());

/** SHA-256 of "abc", from memory of FIPS 180-2, appendix B.1. */
const ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';

/** Two and a half pieces. */
const LONG = Uint8Array.from({ length: 2.5 * (1 << 20) }, (_, i) => (i * i) % 251);

// Rejects a digest of the last piece alone, of pieces out of order, and other text than plain hexadecimal.
describe.each([
  ['by the browser', () => {}],
  ['without a secure context', () => vi.stubGlobal('crypto', {})],
])('the fingerprint of a file, %s', (_, prepare) => {
  it('is that of the published example', async () => {
    prepare();
    expect(await fileHash(new Blob(['abc']))).toBe(ABC);
  });

  it('is that of the whole file', async () => {
    prepare();
    expect(await fileHash(new Blob([LONG]))).toBe(createHash('sha256').update(LONG).digest('hex'));
  });
});
