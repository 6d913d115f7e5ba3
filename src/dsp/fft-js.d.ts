/** Types for the parts of fft.js 4 used here; the package ships none of use. */
declare module 'fft.js' {
  export default class FFT {
    constructor(size: number);
    createComplexArray(): number[];
    realTransform(output: number[], input: readonly number[]): void;
    transform(output: number[], input: readonly number[]): void;
    inverseTransform(output: number[], input: readonly number[]): void;
    completeSpectrum(spectrum: number[]): void;
  }
}
