/** Periodic Hann window of `size` points (the form for averaged spectra). */
export function hannWindow(size: number): Float64Array {
  return Float64Array.from(
    { length: size },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size),
  );
}

/** Sum of squares of a window, the divisor that makes averaged power independent of its shape. */
export function windowEnergy(window: Float64Array): number {
  let sum = 0;
  for (const w of window) sum += w * w;
  return sum;
}
