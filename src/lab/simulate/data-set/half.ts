const word = new Float32Array(1);
const bits = new Uint32Array(word.buffer);

/** A number as an IEEE 754 half: 16 bits, rounded to nearest even; beyond 65,504 infinite. */
export function toHalf(value: number): number {
  word[0] = value;
  const all = bits[0]!;
  const sign = (all >>> 16) & 0x8000;
  const size = all & 0x7fffffff;
  if (size >= 0x7f800000) return sign | (size > 0x7f800000 ? 0x7e00 : 0x7c00);
  if (size >= 0x477ff000) return sign | 0x7c00;
  if (size < 0x38800000) {
    // Below 2^-14 there is no leading one: whole steps of 2^-24, rounded by the float's own arithmetic.
    word[0] = Math.abs(word[0]!) + 0.5;
    return sign | (bits[0]! - 0x3f000000);
  }
  const rounded = size + 0xfff + ((size >>> 13) & 1);
  return sign | ((rounded - 0x38000000) >>> 13);
}

/** All numbers over `unit` as halves. */
export function toHalves(values: Float64Array, unit: number): Uint16Array {
  const out = new Uint16Array(values.length);
  const scale = 1 / unit;
  for (let i = 0; i < out.length; i++) out[i] = toHalf(values[i]! * scale);
  return out;
}
