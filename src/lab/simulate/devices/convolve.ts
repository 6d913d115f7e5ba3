import FFT from 'fft.js';

/** `signal` through the impulse response `kernel`, cut to the length of the signal; overlap-add. */
export function convolve(signal: Float64Array, kernel: Float64Array): Float64Array {
  const size = 2 ** Math.ceil(Math.log2(Math.max(2048, 2 * kernel.length)));
  const hop = size - kernel.length + 1;
  const fft = new FFT(size);
  const response = fft.createComplexArray();
  const block = new Array<number>(2 * size).fill(0);
  pack(block, kernel, 0, kernel.length, new Float64Array(0), 0);
  fft.transform(response, block);
  const out = new Float64Array(signal.length);
  const spectrum = fft.createComplexArray();
  const back = fft.createComplexArray();
  // Two blocks at a time: one as the real, one as the imaginary part of a single transform.
  for (let at = 0; at < signal.length; at += 2 * hop) {
    pack(block, signal, at, hop, signal, at + hop);
    fft.transform(spectrum, block);
    for (let k = 0; k < spectrum.length; k += 2) {
      const re = spectrum[k]! * response[k]! - spectrum[k + 1]! * response[k + 1]!;
      spectrum[k + 1] = spectrum[k]! * response[k + 1]! + spectrum[k + 1]! * response[k]!;
      spectrum[k] = re;
    }
    fft.inverseTransform(back, spectrum);
    for (let i = 0; i < size; i++) {
      if (at + i < out.length) out[at + i]! += back[2 * i]!;
      if (at + hop + i < out.length) out[at + hop + i]! += back[2 * i + 1]!;
    }
  }
  return out;
}

/** `length` samples of two signals as the parts of a complex block, zeros after them. */
function pack(
  block: number[],
  real: Float64Array,
  realAt: number,
  length: number,
  imaginary: Float64Array,
  imaginaryAt: number,
): void {
  block.fill(0);
  for (let i = 0; i < length; i++) {
    block[2 * i] = real[realAt + i] ?? 0;
    block[2 * i + 1] = imaginary[imaginaryAt + i] ?? 0;
  }
}
