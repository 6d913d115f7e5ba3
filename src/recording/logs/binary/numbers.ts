/** How a number is stored: kind and size in bytes. */
export type NumberType = 'f8' | 'f4' | 'f2' | 'i1' | 'u1' | 'i2' | 'u2' | 'i4' | 'u4' | 'i8' | 'u8';

/** Bytes of one number. */
export function sizeOf(type: NumberType): number {
  return Number(type[1]);
}

type Getter = (view: DataView, offset: number, little: boolean) => number;

const GETTERS: Record<NumberType, Getter> = {
  f8: (view, offset, little) => view.getFloat64(offset, little),
  f4: (view, offset, little) => view.getFloat32(offset, little),
  f2: (view, offset, little) => halfFloat(view.getUint16(offset, little)),
  i1: (view, offset) => view.getInt8(offset),
  u1: (view, offset) => view.getUint8(offset),
  i2: (view, offset, little) => view.getInt16(offset, little),
  u2: (view, offset, little) => view.getUint16(offset, little),
  i4: (view, offset, little) => view.getInt32(offset, little),
  u4: (view, offset, little) => view.getUint32(offset, little),
  i8: (view, offset, little) => Number(view.getBigInt64(offset, little)),
  u8: (view, offset, little) => Number(view.getBigUint64(offset, little)),
};

/**
 * Reads `count` numbers that lie `stride` bytes apart, the first at `offset`. Integers of 64 bits are
 * rounded to the nearest float64.
 */
export function readNumbers(
  bytes: Uint8Array,
  type: NumberType,
  little: boolean,
  count: number,
  offset = 0,
  stride = sizeOf(type),
): Float64Array {
  const out = new Float64Array(count);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (type === 'f8') {
    for (let i = 0; i < count; i++) out[i] = view.getFloat64(offset + i * stride, little);
    return out;
  }
  const get = GETTERS[type];
  for (let i = 0; i < count; i++) out[i] = get(view, offset + i * stride, little);
  return out;
}

/** IEEE 754 binary16. */
function halfFloat(bits: number): number {
  const sign = bits & 0x8000 ? -1 : 1;
  const exponent = (bits >> 10) & 31;
  const fraction = bits & 1023;
  if (exponent === 31) return fraction === 0 ? sign * Number.POSITIVE_INFINITY : Number.NaN;
  if (exponent === 0) return sign * fraction * 2 ** -24;
  return sign * (1 + fraction / 1024) * 2 ** (exponent - 15);
}
