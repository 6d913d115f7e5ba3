import type FFT from 'fft.js';
import { BIN_RATE_HZ } from './bins.js';

/** Slower swings are left out: that two recordings are loud for as long does not make them one run. */
const LOWEST_HZ = 8;
/** Power to which each line of the spectrum is taken down: 1 leaves phases alone, 0 changes nothing. */
const WHITENING = 0.8;
/** Least overlap of two series for a score, frames: half a second. */
const LEAST_OVERLAP = 1000;

/** A series ready to be correlated: spectra of it and of its square, at one transform size. */
export interface Whitened {
  length: number;
  spectrum: number[];
  energy: number[];
}

/**
 * Takes a series' own colour out, so that an even beat (mains, a pulsed source) fills one line instead of
 * every lag: generalised cross-correlation with a partial phase transform (Knapp & Carter, IEEE Trans.
 * ASSP 24 (1976) 320). Null for a series that does not change.
 * @param fft of a size that holds both series to be correlated
 */
export function whiten(series: Float32Array, fft: FFT, size: number): Whitened | null {
  const spectrum = spectrumOf(series, fft, size, meanOf(series));
  for (let k = 0; k < size; k++) {
    const hz = (Math.min(k, size - k) * BIN_RATE_HZ) / size;
    const power = spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2;
    const gain = hz < LOWEST_HZ || power === 0 ? 0 : power ** (-WHITENING / 2);
    spectrum[2 * k] = spectrum[2 * k]! * gain;
    spectrum[2 * k + 1] = spectrum[2 * k + 1]! * gain;
  }
  const back = fft.createComplexArray();
  fft.inverseTransform(back, spectrum);
  const white = new Float32Array(series.length);
  let squares = 0;
  for (let i = 0; i < white.length; i++) {
    white[i] = back[2 * i]!;
    squares += white[i]! ** 2;
  }
  const rms = Math.sqrt(squares / white.length);
  if (!(rms > 0)) return null;
  for (let i = 0; i < white.length; i++) white[i] = white[i]! / rms;
  return {
    length: white.length,
    spectrum: spectrumOf(white, fft, size, 0),
    energy: spectrumOf(
      white.map((one) => one * one),
      fft,
      size,
      0,
    ),
  };
}

/**
 * Scores of all lags (where in `a` the start of `b` lies, negative ones from the end of the array): the
 * sum of products over the root of the sum of their squares, so that n events that meet score √n and one
 * loud crack scores 1. Zero where the overlap is too short.
 */
export function lagScores(a: Whitened, b: Whitened, fft: FFT, size: number): Float64Array {
  const products = crossCorrelation(a.spectrum, b.spectrum, fft, size);
  const squares = crossCorrelation(a.energy, b.energy, fft, size);
  const scores = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    const lag = k < a.length ? k : k - size;
    const overlap = Math.min(a.length, lag + b.length) - Math.max(0, lag);
    if (overlap >= LEAST_OVERLAP)
      scores[k] = products[2 * k]! / Math.sqrt(Math.max(squares[2 * k]!, 0.2 * LEAST_OVERLAP));
  }
  return scores;
}

function crossCorrelation(a: number[], b: number[], fft: FFT, size: number): number[] {
  const product = fft.createComplexArray();
  for (let k = 0; k < size; k++) {
    const ar = a[2 * k]!;
    const ai = a[2 * k + 1]!;
    const br = b[2 * k]!;
    const bi = b[2 * k + 1]!;
    product[2 * k] = ar * br + ai * bi;
    product[2 * k + 1] = ai * br - ar * bi;
  }
  const result = fft.createComplexArray();
  fft.inverseTransform(result, product);
  return result;
}

function spectrumOf(series: Float32Array, fft: FFT, size: number, subtract: number): number[] {
  const padded = new Array<number>(size).fill(0);
  for (let i = 0; i < series.length; i++) padded[i] = series[i]! - subtract;
  const spectrum = fft.createComplexArray();
  fft.realTransform(spectrum, padded);
  fft.completeSpectrum(spectrum);
  return spectrum;
}

function meanOf(series: Float32Array): number {
  let sum = 0;
  for (const one of series) sum += one;
  return sum / series.length;
}
