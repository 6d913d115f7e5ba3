import { describe, expect, it } from 'vitest';
import { pack, unpack } from '../../../../src/apps/report/pack.js';

describe('pack', () => {
  it('gives back what it was given', () => {
    const value = {
      words: 'a </script> b',
      nothing: null,
      list: [1, { deep: Uint8Array.of(0, 255, 3) }],
      marks: Uint32Array.of(5, 5, 100_000, 4_000_000_000),
      sound: Int16Array.of(-32_768, 0, 32_767),
      empty: new Float64Array(0),
    };
    expect(unpack(JSON.parse(JSON.stringify(pack(value))))).toEqual(value);
  });

  it('keeps floats to 1/65,000 of their range, and NaN', () => {
    const values = Float64Array.from({ length: 1000 }, (_, k) => 20 + 30 * Math.sin(k));
    values[500] = NaN;
    const back = unpack(pack(values)) as Float64Array;
    expect(back[500]).toBeNaN();
    back.forEach((one, k) => {
      if (k !== 500) expect(Math.abs(one - values[k]!)).toBeLessThan(60 / 65_000);
    });
  });

  it('keeps a constant, and arrays of NaN alone', () => {
    expect(unpack(pack(Float64Array.of(7, 7)))).toEqual(Float64Array.of(7, 7));
    expect(unpack(pack(Float64Array.of(NaN)))).toEqual(Float64Array.of(NaN));
  });
});
