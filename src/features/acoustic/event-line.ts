import { selectRank } from '../../dsp/index.js';
import { MODULATION_BIN_HZ, MODULATION_BINS } from './modulation.js';

/** Range in which an event rate is sought, Hz. */
export const LINE_LOW_HZ = 8;
export const LINE_HIGH_HZ = 1000;

/** The strongest periodic modulation of a window. */
export interface EventLine {
  /** Fundamental, Hz. */
  frequencyHz: number;
  /** Height over the local floor (ratio) of the fundamental. */
  prominence: number;
  /** Share of the power within ±8 bins that lies within ±1 bin: near 1 for a clockwork, lower when events jitter. */
  sharpness: number;
  /** Power of the line and its first four harmonics over all modulation power above 20 Hz. */
  share: number;
  /** Harmonics two to four whose prominence exceeds 3. */
  harmonics: number;
}

const FIRST = Math.ceil(LINE_LOW_HZ / MODULATION_BIN_HZ);
const LAST = Math.floor(LINE_HIGH_HZ / MODULATION_BIN_HZ);
const SMOOTH = 2;
/** A peak at half or a third of the strongest line takes over from this share of its prominence. */
const SUBHARMONIC_SHARE = 0.15;
const CLEAR = 3;

/** Finds the event line in cross-band modulation spectra; keeps work arrays between windows. */
export class EventLineFinder {
  readonly #smooth = new Float64Array(MODULATION_BINS);
  readonly #prominence = new Float64Array(MODULATION_BINS);
  readonly #block = new Float64Array(MODULATION_BINS);

  /** Prominence over the floor of each bin of the last search. */
  get prominence(): Float64Array {
    return this.#prominence;
  }

  /**
   * @param cross cross-band modulation power, see `modulation.ts`
   * @param masked bins to leave out (lines that stood before the arc), or undefined
   * @returns null when nothing is modulated at all
   */
  find(cross: Float64Array, masked?: Uint8Array): EventLine | null {
    this.#smoothAndCompare(cross);
    const prominence = this.#prominence;
    let best = -1;
    for (let k = FIRST; k <= LAST; k++) {
      if (masked?.[k]) continue;
      if (best < 0 || prominence[k]! > prominence[best]!) best = k;
    }
    if (best < 0 || !(prominence[best]! > 0)) return null;
    const fundamental = this.#fundamentalBelow(best, masked);
    return this.#describe(fundamental, cross);
  }

  #smoothAndCompare(cross: Float64Array): void {
    const smooth = this.#smooth;
    let sum = 0;
    const first = FIRST - 2 * SMOOTH;
    for (let j = first - SMOOTH; j < first + SMOOTH; j++) sum += cross[Math.abs(j)]!;
    for (let k = first; k < LAST + 40; k++) {
      sum += cross[k + SMOOTH]!;
      smooth[k] = sum / (2 * SMOOTH + 1);
      sum -= cross[Math.abs(k - SMOOTH)]!;
    }
    // The floor is a median over blocks that widen with frequency, as the spectrum falls.
    for (let start = FIRST; start <= LAST; ) {
      const width = start < 64 ? 16 : start < 256 ? 32 : 64;
      const from = Math.max(FIRST, start - width / 2);
      const to = Math.min(LAST + 40, start + width + width / 2);
      const block = this.#block;
      for (let i = from; i < to; i++) block[i - from] = Math.abs(smooth[i]!);
      const floor = selectRank(block, to - from, (to - from) >> 1);
      const end = Math.min(LAST + 1, start + width);
      for (let k = start; k < end; k++)
        this.#prominence[k] = floor > 0 ? Math.max(0, smooth[k]!) / floor : 0;
      start = end;
    }
  }

  /** Follows the strongest line down to a half or a third of its frequency when a line stands there. */
  #fundamentalBelow(peak: number, masked?: Uint8Array): number {
    for (const divisor of [2, 3]) {
      const centre = peak / divisor;
      if (centre < FIRST + 2) continue;
      const candidate = this.#peakNear(centre, 2, masked);
      const height = this.#prominence[candidate]!;
      const isPeak =
        height >= (this.#prominence[candidate - 3] ?? 0) &&
        height >= (this.#prominence[candidate + 3] ?? 0);
      if (isPeak && height > CLEAR * 2 && height > SUBHARMONIC_SHARE * this.#prominence[peak]!)
        return this.#fundamentalBelow(candidate, masked);
    }
    return peak;
  }

  #peakNear(centre: number, reach: number, masked?: Uint8Array): number {
    let best = Math.round(centre);
    for (let k = Math.round(centre) - reach; k <= Math.round(centre) + reach; k++) {
      if (k < FIRST || k > LAST || masked?.[k]) continue;
      if (this.#prominence[k]! > this.#prominence[best]!) best = k;
    }
    return best;
  }

  #describe(fundamental: number, cross: Float64Array): EventLine {
    const total = bandSum(cross, Math.round(20 / MODULATION_BIN_HZ), LAST);
    let line = 0;
    let harmonics = 0;
    for (let h = 1; h <= 4 && h * fundamental <= LAST; h++) {
      const bin = this.#peakNear(h * fundamental, h + 1);
      line += bandSum(cross, bin - 3, bin + 3);
      if (h > 1 && this.#prominence[bin]! > CLEAR) harmonics++;
    }
    const near = bandSum(cross, fundamental - 1, fundamental + 1);
    const around = bandSum(cross, fundamental - 8, fundamental + 8);
    return {
      frequencyHz: this.#centre(fundamental) * MODULATION_BIN_HZ,
      prominence: this.#prominence[fundamental]!,
      sharpness: around > 0 ? near / around : 0,
      share: total > 0 ? Math.min(1, line / total) : 0,
      harmonics,
    };
  }

  /** Power-weighted position within ±3 bins, since jitter spreads a line over several. */
  #centre(bin: number): number {
    let weight = 0;
    let moment = 0;
    for (let k = bin - 3; k <= bin + 3; k++) {
      const height = Math.max(0, this.#smooth[k]!);
      weight += height;
      moment += height * k;
    }
    return weight > 0 ? moment / weight : bin;
  }
}

/** Sum of the positive values of bins `from` to `to`, both included. */
function bandSum(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let k = Math.max(0, from); k <= to && k < values.length; k++) sum += Math.max(0, values[k]!);
  return sum;
}
