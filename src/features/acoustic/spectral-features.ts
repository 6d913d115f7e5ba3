import { BAND_LOW_HZ, bandTopHz } from './grid.js';
import { spectralShape } from './meyda-adapter.js';

/**
 * The last eight features of the vector, from the power spectrum of a window: shape within the band and
 * above 300 Hz, and ratios of bands. A ratio that reaches beyond the sample rate is absent.
 */
export function spectralFeatures(power: Float64Array, binHz: number, rateHz: number): number[] {
  const top = rateHz * 0.47;
  const inBand = spectralShape(power, binHz, BAND_LOW_HZ, bandTopHz(rateHz));
  // Up to 7 kHz only, so that rates from 16 kHz on give the same figure.
  const broad = spectralShape(power, binHz, 300, Math.min(7000, top));
  const reference = bandPower(power, binHz, 1500, Math.min(6000, top));
  const ratio = (low: number, high: number) =>
    high > top ? NaN : Math.log10((bandPower(power, binHz, low, high) + 1e-30) / reference);
  return [
    inBand.flatness,
    Math.log2(broad.centroidHz),
    Math.log2(broad.spreadHz),
    Math.log10(inBand.crest),
    ratio(300, 1000),
    ratio(1000, 2000),
    ratio(6000, 12_000),
    ratio(12_000, 18_000),
  ];
}

function bandPower(power: Float64Array, binHz: number, lowHz: number, highHz: number): number {
  let sum = 0;
  const last = Math.min(power.length - 1, Math.floor(highHz / binHz));
  for (let k = Math.ceil(lowHz / binHz); k <= last; k++) sum += power[k]!;
  return sum;
}
