import { mean } from '../../../dsp/index.js';

/** Level above and below the mean of a block. */
export interface PeakBackground {
  mean: number;
  /** Mean of the samples above the mean; the mean itself where none lies above (a constant). */
  peak: number;
  /** Mean of the samples at or below the mean. */
  background: number;
  min: number;
}

/**
 * Peak and background of a block of voltage or current: the means of the samples above, and at or
 * below, the block's mean (Montero et al., Crystals 15 (2025) 895, over 200 ms). Null when empty or
 * not finite.
 */
export function peakBackground(samples: ArrayLike<number>): PeakBackground | null {
  const centre = mean(samples);
  if (!Number.isFinite(centre)) return null;
  let [high, highs, low, lows, min] = [0, 0, 0, 0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < samples.length; i++) {
    const value = samples[i]!;
    min = Math.min(min, value);
    if (value > centre) {
      high += value;
      highs++;
    } else {
      low += value;
      lows++;
    }
  }
  return {
    mean: centre,
    peak: highs === 0 ? centre : high / highs,
    background: lows === 0 ? centre : low / lows,
    min,
  };
}

/** The same over blocks of `blockS`; a last block that is not full is left out. */
export function peakBackgroundBlocks(
  samples: Float64Array,
  sampleRateHz: number,
  blockS = 0.2,
): PeakBackground[] {
  const size = Math.round(blockS * sampleRateHz);
  if (!(size >= 1)) return [];
  return Array.from({ length: Math.floor(samples.length / size) }, (_, i) =>
    peakBackground(samples.subarray(i * size, (i + 1) * size)),
  ).filter((block) => block !== null);
}

/** Ratios of peak, background and least value to the mean. Defined here, after a published idea. */
export interface TransferIndices {
  /** Peak current over mean current; 1 for an even current. */
  peakOverMean: number;
  /** 1 less background over mean current; 0 for an even current. */
  backgroundDeficit: number;
  /** 1 less least voltage over background voltage; near 1 with shorts, near 0 without. */
  voltageDip: number;
}

/** Null where a level to divide by is 0. (The idea is Ogunbiyi & Norrish's, 1996; the names are ours.) */
export function transferIndices(
  current: PeakBackground,
  voltage: PeakBackground,
): TransferIndices | null {
  if (current.mean === 0 || voltage.background === 0) return null;
  return {
    peakOverMean: current.peak / current.mean,
    backgroundDeficit: 1 - current.background / current.mean,
    voltageDip: 1 - voltage.min / voltage.background,
  };
}

/**
 * Counts of re-ignition voltage peaks in bins of `binV`, by the bin's lower edge; a narrow count
 * speaks of a stable arc (Ferreira et al., Soldagem & Inspeção 24 (2019) e2407). NaN peaks are left out.
 */
export function peakCounts(peaksV: ArrayLike<number>, binV: number): Map<number, number> {
  const counts = new Map<number, number>();
  for (const peak of Array.from(peaksV)
    .filter(Number.isFinite)
    .sort((a, b) => a - b)) {
    const edge = Math.floor(peak / binV) * binV;
    counts.set(edge, (counts.get(edge) ?? 0) + 1);
  }
  return counts;
}
