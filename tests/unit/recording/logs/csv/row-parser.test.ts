import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RowParser } from '../../../../../src/recording/logs/csv/row-parser.js';

/* Expected values: JavaScript's own Number(text), which rounds correctly by specification. */

function parse(text: string, decimal: '.' | ',' = '.'): number {
  const bytes = new TextEncoder().encode(`${text}\n`);
  const out = [new Float64Array(1)];
  const parser = new RowParser({ delimiter: ';', decimal }, [0], [0]);
  const rows = parser.parse(bytes, 0, bytes.length, out, 0);
  return rows === 1 && !parser.stuck ? (out[0]?.[0] ?? Number.NaN) : Number.NaN;
}

describe('RowParser', () => {
  it('reads numbers of up to 15 digits exactly', () => {
    const digits = fc.tuple(
      fc.bigInt({ min: 0n, max: 999_999_999_999_999n }),
      fc.integer({ min: 0, max: 15 }),
      fc.boolean(),
    );
    fc.assert(
      fc.property(digits, ([mantissa, places, negative]) => {
        const padded = mantissa.toString().padStart(places + 1, '0');
        const cut = padded.length - places;
        const text = `${negative ? '-' : ''}${padded.slice(0, cut)}.${padded.slice(cut)}`;
        expect(parse(text)).toBe(Number(text));
        expect(parse(text.replace('.', ','), ',')).toBe(Number(text));
      }),
      { seed: 11, numRuns: 2000 },
    );
  });

  it('reads any float64 as printed within 5e-16, relative', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        for (const text of [String(value), value.toExponential(18)]) {
          const error = Math.abs(parse(text) - value);
          expect(error).toBeLessThanOrEqual(Math.max(5e-16 * Math.abs(value), 5e-324));
        }
      }),
      { seed: 12, numRuns: 4000 },
    );
  });

  it.each([
    '',
    ' ',
    '-',
    '+',
    '.',
    'e5',
    '1e',
    '1e+',
    '--1',
    '1.2.3',
    '0x10',
    '1 2',
    '1,5',
    'NaN',
    '1-2',
  ])('stops at %j', (text) => {
    expect(parse(text)).toBeNaN();
  });
});
