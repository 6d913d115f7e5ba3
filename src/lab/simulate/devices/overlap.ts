import FFT from 'fft.js';

/**
 * Changes a sound in its spectrum: blocks of `size` samples that overlap by half, root-Hann before and after.
 * `change` gets each block's spectrum in turn (real and imaginary parts alternate) and must keep the upper half
 * the mirror of the lower. Same length back.
 */
export function inOverlappingBlocks(
  samples: Float64Array,
  size: number,
  change: (spectrum: number[]) => void,
): Float64Array {
  const hop = size / 2;
  const fft = new FFT(size);
  const window = Float64Array.from({ length: size }, (_, i) =>
    Math.sin((Math.PI * (i + 0.5)) / size),
  );
  const block = new Array<number>(2 * size).fill(0);
  const spectrum = fft.createComplexArray();
  const back = fft.createComplexArray();
  const out = new Float64Array(samples.length);
  for (let at = -hop; at < samples.length; at += hop) {
    for (let i = 0; i < size; i++) block[2 * i] = (samples[at + i] ?? 0) * window[i]!;
    fft.transform(spectrum, block);
    change(spectrum);
    fft.inverseTransform(back, spectrum);
    for (let i = 0; i < size; i++) {
      if (at + i >= 0 && at + i < out.length) out[at + i]! += back[2 * i]! * window[i]!;
    }
  }
  return out;
}
