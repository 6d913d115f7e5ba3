/**
 * Random draws from a seed. A 128-bit small fast counter generator (sfc32, from memory of the
 * PractRand
 * family), started from a hash of seed and label, so that each part of the world has its own
 * stream.
 */
export class Dice {
  private a = 0;
  private b = 0;
  private c = 0;
  private d = 1;

  /**
   * @param seed any integer
   * @param label name of the part that draws; other labels give unrelated streams
   */
  constructor(seed: number, label: string) {
    let hash = 0x811c9dc5 ^ (seed | 0);
    for (let k = 0; k < label.length; k++) {
      hash = Math.imul(hash ^ label.charCodeAt(k), 0x01000193);
    }
    this.a = hash | 0;
    this.b = (seed | 0) ^ 0x2545f491;
    this.c = Math.imul(hash, 0x9e3779b1) | 0;
    for (let k = 0; k < 16; k++) this.next();
  }

  /** Even draw from 0 (included) to 1 (not included). */
  next(): number {
    const sum = (((this.a + this.b) | 0) + this.d) | 0;
    this.d = (this.d + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = (this.c << 21) | (this.c >>> 11);
    this.c = (this.c + sum) | 0;
    return (sum >>> 0) / 4294967296;
  }

  /** Even draw between two bounds. */
  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Draw whose logarithm is even between two positive bounds. */
  ratio(low: number, high: number): number {
    return low * (high / low) ** this.next();
  }

  /** Whole number from low to high, both included. */
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }

  /** True with the given probability. */
  chance(probability: number): boolean {
    return this.next() < probability;
  }

  /** One entry of a list that is not empty. */
  pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.next() * list.length)] as T;
  }

  /** Bell-shaped draw of mean 0 and variance 1. */
  bell(): number {
    const r = Math.sqrt(-2 * Math.log(1 - this.next()));
    return r * Math.cos(2 * Math.PI * this.next());
  }

  /** Cheap noise of variance 1, bounded by ±3: the sum of three even draws. */
  noise(): number {
    return 2 * (this.next() + this.next() + this.next()) - 3;
  }

  /** Positive draw around a median, with the spread of its logarithm. */
  around(median: number, spread: number): number {
    return median * Math.exp(spread * this.bell());
  }

  /**
   * Waiting time of given mean and coefficient of variation (gamma law; method of Marsaglia and
   * Tsang 2000,
   * from memory).
   */
  wait(mean: number, cv: number): number {
    if (cv < 0.02) return mean * (1 + cv * this.bell());
    const shape = 1 / (cv * cv);
    const boosted = shape < 1 ? shape + 1 : shape;
    const d = boosted - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.bell();
      const v = (1 + c * x) ** 3;
      if (v <= 0) continue;
      if (Math.log(1 - this.next()) >= 0.5 * x * x + d - d * v + d * Math.log(v)) continue;
      const small = shape < 1 ? (1 - this.next()) ** (1 / shape) : 1;
      return ((d * v * small) / shape) * mean;
    }
  }
}
