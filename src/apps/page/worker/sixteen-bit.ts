/** Samples at full scale 1 as 16-bit numbers; what goes beyond stands at the rail. NaN becomes 0. */
export function toSixteenBit(samples: ArrayLike<number>): Int16Array {
  return Int16Array.from(samples, (value) =>
    Math.max(-32768, Math.min(32767, Math.round(value * 32768))),
  );
}
