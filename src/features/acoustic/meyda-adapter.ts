import meydaModule from 'meyda';

interface SpectralInput {
  ampSpectrum: Float64Array | Float32Array;
}
interface Extractors {
  spectralCentroid(input: SpectralInput): number;
  spectralSpread(input: SpectralInput): number;
  spectralFlatness(input: SpectralInput): number;
  spectralCrest(input: SpectralInput): number;
}

/**
 * The four spectral shapes taken from meyda, in stated units. Only its extractors are called, on a
 * spectrum of ours: its own frame handling, roll-off, slope, kurtosis and flux give wrong values, and
 * its module state (sample rate, filter banks) is never touched.
 */
export interface SpectralShape {
  /** Amplitude-weighted mean frequency, Hz. */
  centroidHz: number;
  /** Amplitude-weighted standard deviation about the centroid, Hz. */
  spreadHz: number;
  /** Geometric over arithmetic mean of the amplitudes: 1 for a flat band, towards 0 for a tone. */
  flatness: number;
  /** Largest amplitude over the root mean square amplitude. */
  crest: number;
}

/**
 * Shape of the part of a power spectrum between two frequencies.
 * @param power squared magnitudes, bin k at k·binHz
 * @returns all NaN where the band is empty or silent
 */
export function spectralShape(
  power: Float64Array,
  binHz: number,
  lowHz: number,
  highHz: number,
): SpectralShape {
  const first = Math.ceil(lowHz / binHz);
  const last = Math.min(power.length - 1, Math.floor(highHz / binHz));
  const ampSpectrum = new Float64Array(Math.max(0, last - first + 1));
  let sum = 0;
  for (let i = 0; i < ampSpectrum.length; i++) {
    ampSpectrum[i] = Math.sqrt(power[first + i]!);
    sum += ampSpectrum[i]!;
  }
  if (ampSpectrum.length < 2 || sum === 0)
    return { centroidHz: NaN, spreadHz: NaN, flatness: NaN, crest: NaN };
  const extract = (meydaModule as unknown as { featureExtractors: Extractors }).featureExtractors;
  return {
    centroidHz: (first + extract.spectralCentroid({ ampSpectrum })) * binHz,
    spreadHz: extract.spectralSpread({ ampSpectrum }) * binHz,
    flatness: extract.spectralFlatness({ ampSpectrum }),
    crest: extract.spectralCrest({ ampSpectrum }),
  };
}
