import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../../src/core/index.js';
import { toHalf } from '../../../../../src/lab/simulate/data-set/half.js';

/** The value of a half by the definition of IEEE 754: sign, 5 bits of exponent (bias 15), 10 of fraction. */
function fromHalf(code: number): number {
  const sign = code & 0x8000 ? -1 : 1;
  const exponent = (code >> 10) & 31;
  const fraction = code & 1023;
  if (exponent === 31) return fraction > 0 ? Number.NaN : sign * Number.POSITIVE_INFINITY;
  if (exponent === 0) return sign * fraction * 2 ** -24;
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}

describe('toHalf', () => {
  it.each([
    // By the definition: 1 is exponent 15, no fraction; 65,504 the largest; 2^-24 the smallest above 0.
    [0, 0x0000],
    [1, 0x3c00],
    [-2, 0xc000],
    [65_504, 0x7bff],
    [65_519, 0x7bff],
    [65_520, 0x7c00],
    [1e9, 0x7c00],
    [-1e9, 0xfc00],
    [2 ** -24, 0x0001],
    [2 ** -25, 0x0000],
    [1.5 * 2 ** -24, 0x0002],
    [2 ** -14, 0x0400],
    // Half-way between 1 and the next goes to the even one, and half-way above that too.
    [1 + 2 ** -11, 0x3c00],
    [1 + 3 * 2 ** -11, 0x3c02],
  ])('%d is %i', (value, code) => {
    expect(toHalf(value)).toBe(code);
  });

  it('keeps every half, and gives the nearest for what lies between', () => {
    for (let code = 0; code < 0x7c00; code++) expect(toHalf(fromHalf(code))).toBe(code);
    const random = createRandom(1);
    for (let k = 0; k < 20_000; k++) {
      const value = Math.fround((random.next() < 0.5 ? -1 : 1) * random.logUniform(1e-8, 6e4));
      const back = toHalf(value);
      const error = Math.abs(fromHalf(back) - value);
      for (const near of [back - 1, back + 1])
        if (Number.isFinite(fromHalf(near)))
          expect(error).toBeLessThanOrEqual(Math.abs(fromHalf(near) - value));
    }
  });

  it('keeps what is no number', () => {
    expect(fromHalf(toHalf(Number.NaN))).toBeNaN();
  });
});
