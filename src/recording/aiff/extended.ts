/**
 * Value of an 80-bit IEEE 754 extended number (big-endian), the form in which AIFF states its sample rate.
 * NaN when fewer than 10 bytes are there.
 */
export function readExtended(bytes: Uint8Array, offset: number): number {
  if (offset + 10 > bytes.length) return Number.NaN;
  const view = new DataView(bytes.buffer, bytes.byteOffset + offset, 10);
  const head = view.getUint16(0);
  const mantissa = view.getUint32(2) * 2 ** -31 + view.getUint32(6) * 2 ** -63;
  const exponent = (head & 0x7fff) - 16383;
  return (head & 0x8000 ? -1 : 1) * mantissa * 2 ** exponent;
}
