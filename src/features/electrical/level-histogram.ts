/** A histogram that forgets: each `add` of a block first fades what was there. */
export class LevelHistogram {
  readonly counts: Float64Array;
  readonly lowest: number;
  readonly width: number;
  total = 0;

  /** `bins` bins of `width` from `lowest` up; values outside land in the outermost bin. */
  constructor(lowest: number, width: number, bins: number) {
    this.lowest = lowest;
    this.width = width;
    this.counts = new Float64Array(bins);
  }

  /** Multiplies all that was counted by `keep` (0 to 1). */
  fade(keep: number): void {
    const counts = this.counts;
    for (let k = 0; k < counts.length; k++) counts[k] = counts[k]! * keep;
    this.total *= keep;
  }

  add(values: Float64Array): void {
    const counts = this.counts;
    const last = counts.length - 1;
    const lowest = this.lowest;
    const scale = 1 / this.width;
    for (let n = 0; n < values.length; n++) {
      const bin = ((values[n]! - lowest) * scale) | 0;
      const at = bin < 0 ? 0 : Math.min(bin, last);
      counts[at] = counts[at]! + 1;
    }
    this.total += values.length;
  }

  /** The `share` quantile of what lies at or above `from`, by linear interpolation in the bin; NaN when nothing does. */
  quantile(share: number, from = Number.NEGATIVE_INFINITY): number {
    const first = this.#binOf(from);
    let mass = 0;
    for (let k = first; k < this.counts.length; k++) mass += this.counts[k]!;
    if (!(mass > 0)) return Number.NaN;
    let left = share * mass;
    for (let k = first; k < this.counts.length; k++) {
      const count = this.counts[k]!;
      if (count > 0 && left <= count) return this.lowest + (k + left / count) * this.width;
      left -= count;
    }
    return this.lowest + this.counts.length * this.width;
  }

  /** Mass and mean of what lies below `until`. */
  below(until: number): { mass: number; mean: number } {
    const end = this.#binOf(until);
    let mass = 0;
    let sum = 0;
    for (let k = 0; k < end; k++) {
      mass += this.counts[k]!;
      sum += this.counts[k]! * (this.lowest + (k + 0.5) * this.width);
    }
    return { mass, mean: mass > 0 ? sum / mass : Number.NaN };
  }

  #binOf(value: number): number {
    const bin = Math.floor((value - this.lowest) / this.width);
    return Math.min(this.counts.length, Math.max(0, bin));
  }
}

/** The split of a histogram into a lower and an upper level. */
export interface TwoLevels {
  low: number;
  high: number;
  /** Share of the mass in the upper level. */
  highShare: number;
  /** Between-class share of the variance, 0 to 1: near 0.64 for a bell, 0.75 for a flat spread, 1 for two sharp levels. */
  separation: number;
}

/**
 * Best split of what lies at or above `from` into two levels (N. Otsu, IEEE Trans. SMC 9 (1979) 62, from
 * memory of it). NaN levels and separation 0 when there is nothing, or nothing but one bin.
 */
export function splitTwoLevels(
  histogram: LevelHistogram,
  from = Number.NEGATIVE_INFINITY,
): TwoLevels {
  const { counts, lowest, width } = histogram;
  const first = Math.max(0, Math.min(counts.length, Math.floor((from - lowest) / width)));
  let mass = 0;
  let sum = 0;
  let squares = 0;
  for (let k = first; k < counts.length; k++) {
    mass += counts[k]!;
    sum += counts[k]! * k;
    squares += counts[k]! * k * k;
  }
  const variance = mass > 0 ? squares / mass - (sum / mass) ** 2 : 0;
  if (!(variance > 1e-9)) return { low: Number.NaN, high: Number.NaN, highShare: 0, separation: 0 };
  let bestBetween = -1;
  let bestMass = 0;
  let bestSum = 0;
  let lowMass = 0;
  let lowSum = 0;
  for (let k = first; k < counts.length - 1; k++) {
    if (counts[k] === 0) continue;
    lowMass += counts[k]!;
    lowSum += counts[k]! * k;
    const highMass = mass - lowMass;
    if (highMass < 1e-9 * mass) break;
    const between = lowMass * highMass * (lowSum / lowMass - (sum - lowSum) / highMass) ** 2;
    if (between > bestBetween) {
      bestBetween = between;
      bestMass = lowMass;
      bestSum = lowSum;
    }
  }
  const level = (bin: number) => lowest + (bin + 0.5) * width;
  return {
    low: level(bestSum / bestMass),
    high: level((sum - bestSum) / (mass - bestMass)),
    highShare: 1 - bestMass / mass,
    separation: Math.min(1, bestBetween / (mass * mass) / variance),
  };
}
