import { existsSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { spool } from '../../../src/files/spool.js';

describe('spool', () => {
  it('copies a pipe to disk and removes the copy', async () => {
    const copy = await spool(Readable.from([Buffer.from('ab'), Buffer.from('c')]));
    expect(readFileSync(copy.path, 'utf8')).toBe('abc');
    await copy.remove();
    expect(existsSync(dirname(copy.path))).toBe(false);
  });

  it('stops an endless pipe at the limit', async () => {
    // Rejects one that fills the disk: this stream has no end.
    let given = 0;
    const endless = new Readable({
      read() {
        given += 1000;
        this.push(Buffer.alloc(1000));
      },
    });
    await expect(spool(endless, 10_000)).rejects.toMatchObject({ code: 'stdin-too-long' });
    expect(given).toBeLessThan(1_000_000);
  });
});
