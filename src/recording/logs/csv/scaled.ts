const POW10 = Float64Array.from({ length: 23 }, (_, i) => Number(`1e${i}`));

/** Mantissa times a power of ten. Up to 2^53 and 1e±22 it rounds once only, and so correctly. */
export function scaled(mantissa: number, scale: number): number {
  if (scale === 0 || mantissa === 0) return mantissa + 0 * scale;
  if (scale >= -22 && scale < 0) return mantissa / (POW10[-scale] as number);
  if (scale > 0 && scale <= 22) return mantissa * (POW10[scale] as number);
  if (Number.isNaN(scale)) return scale;
  return Number(`${mantissa}e${scale}`);
}
