import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { fingerprint } from '../../../src/core/index.js';

describe('fingerprint', () => {
  it('is the start of the SHA-256 of the JSON with sorted keys', () => {
    // Expected by Node's own hash (OpenSSL), another implementation than ours, over text written by hand.
    const expected = createHash('sha256').update('{"a":[1,{"c":2,"d":3}],"b":"x"}').digest('hex');
    expect(fingerprint({ b: 'x', a: [1, { d: 3, c: 2 }] })).toBe(expected.slice(0, 16));
  });

  it('changes with any value', () => {
    expect(fingerprint({ a: 1 })).not.toBe(fingerprint({ a: 1.0000001 }));
  });
});
