const BINS_AN_OCTAVE = 24;
const FINE = 16;
const LOWEST_HZ = 4;
const BINS = 9 * BINS_AN_OCTAVE;
/** Exact rates within the fullest place from which they alone give the run's rate. */
const ENOUGH_EXACT = 3;

/**
 * Event rates of many windows in bins of 1/24 octave: the run's rate is the median within the fullest
 * place, so that windows with an octave error or a stray line do not pull it, and one window more or
 * less at an edge of the arc hardly moves it. Memory does not grow with the run.
 */
export class RateTally {
  readonly #weights = new Float64Array(BINS);
  readonly #all = new FineTally();
  readonly #exact = new FineTally();
  #windows = 0;

  /**
   * @param rateHz what one window showed; outside 4 Hz to 2 kHz it does not count
   * @param exact true for a line, false for a count of onsets, which stands in where there are no lines
   */
  add(rateHz: number, exact = true): void {
    const bin = Math.floor(Math.log2(rateHz / LOWEST_HZ) * BINS_AN_OCTAVE);
    if (!(bin >= 0 && bin < BINS)) return;
    this.#windows++;
    this.#weights[bin] = this.#weights[bin]! + 1;
    this.#all.add(rateHz);
    if (exact) this.#exact.add(rateHz);
  }

  merge(other: RateTally): void {
    this.#windows += other.#windows;
    for (let i = 0; i < BINS; i++) this.#weights[i] = this.#weights[i]! + other.#weights[i]!;
    this.#all.merge(other.#all);
    this.#exact.merge(other.#exact);
  }

  /** Windows with a clear line or clear onsets. */
  get windows(): number {
    return this.#windows;
  }

  /**
   * The run's rate, Hz, and the share of the clear windows' weight that stands within a sixth of an
   * octave of it. Null without any clear window.
   */
  rate(): { rateHz: number; share: number } | null {
    const reach = BINS_AN_OCTAVE / 6;
    let best = -1;
    let bestWeight = 0;
    let total = 0;
    for (let i = 0; i < BINS; i++) {
      total += this.#weights[i]!;
      const around = this.#around(i, reach);
      if (around > bestWeight) {
        best = i;
        bestWeight = around;
      }
    }
    if (best < 0) return null;
    const from = Math.max(0, best - reach) * FINE;
    const to = Math.min(BINS, best + reach + 1) * FINE;
    const tally = this.#exact.count(from, to) >= ENOUGH_EXACT ? this.#exact : this.#all;
    return { rateHz: tally.median(from, to), share: bestWeight / total };
  }

  #around(centre: number, reach: number): number {
    let sum = 0;
    for (let i = Math.max(0, centre - reach); i <= Math.min(BINS - 1, centre + reach); i++)
      sum += this.#weights[i]!;
    return sum;
  }
}

/** Counts and sums in bins of 1/384 octave (0.18 %): a median without keeping the values. */
class FineTally {
  readonly #counts = new Float64Array(BINS * FINE);
  readonly #sums = new Float64Array(BINS * FINE);

  add(rateHz: number): void {
    const bin = Math.floor(Math.log2(rateHz / LOWEST_HZ) * BINS_AN_OCTAVE * FINE);
    this.#counts[bin] = this.#counts[bin]! + 1;
    this.#sums[bin] = this.#sums[bin]! + rateHz;
  }

  merge(other: FineTally): void {
    for (let i = 0; i < BINS * FINE; i++) {
      this.#counts[i] = this.#counts[i]! + other.#counts[i]!;
      this.#sums[i] = this.#sums[i]! + other.#sums[i]!;
    }
  }

  count(from: number, to: number): number {
    let count = 0;
    for (let i = from; i < to; i++) count += this.#counts[i]!;
    return count;
  }

  /** Mean of the two middle values of bins `from` up to `to`, each told by the mean of its bin. */
  median(from: number, to: number): number {
    const count = this.count(from, to);
    const middle = Math.floor((count - 1) / 2);
    return (this.#at(middle, from) + this.#at(Math.ceil((count - 1) / 2), from)) / 2;
  }

  #at(rank: number, from: number): number {
    let passed = 0;
    for (let i = from; i < BINS * FINE; i++) {
      passed += this.#counts[i]!;
      if (passed > rank) return this.#sums[i]! / this.#counts[i]!;
    }
    return Number.NaN;
  }
}
