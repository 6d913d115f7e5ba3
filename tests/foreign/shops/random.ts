/** Chance with a memory: the same seed and label give the same throws. */
export class Dice {
  private state: number;
  private spare: number | null = null;

  constructor(seed: number, label = '') {
    let h = (seed ^ 0x2f6b1d35) >>> 0;
    for (let i = 0; i < label.length; i++) h = Math.imul(h ^ label.charCodeAt(i), 0x01000193) >>> 0;
    this.state = h;
    for (let i = 0; i < 4; i++) this.unit();
  }

  /** Even in [0, 1): a counter stirred twice. */
  unit(): number {
    this.state = (this.state + 0x9e3779b9) >>> 0;
    let z = this.state;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return ((z ^ (z >>> 15)) >>> 0) / 4294967296;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.unit();
  }

  /** Even in the logarithm. */
  scale(low: number, high: number): number {
    return low * (high / low) ** this.unit();
  }

  chance(share: number): boolean {
    return this.unit() < share;
  }

  whole(count: number): number {
    return Math.floor(this.unit() * count);
  }

  pick<T>(from: readonly T[]): T {
    const got = from[this.whole(from.length)];
    if (got === undefined) throw new Error('nothing to pick from');
    return got;
  }

  gauss(): number {
    if (this.spare !== null) {
      const kept = this.spare;
      this.spare = null;
      return kept;
    }
    const r = Math.sqrt(-2 * Math.log(1 - this.unit()));
    const a = 2 * Math.PI * this.unit();
    this.spare = r * Math.sin(a);
    return r * Math.cos(a);
  }

  /** Around one, with the given spread of the logarithm. */
  spread(sigma: number): number {
    return Math.exp(sigma * this.gauss());
  }

  /** Inside the window eight times in ten, else up to a quarter of its width outside. */
  window(low: number, high: number): number {
    if (this.chance(0.8)) return this.between(low, high);
    const out = this.between(0, 0.25) * (high - low);
    return this.chance(0.5) ? low - out : high + out;
  }
}

/** One seed out of two, so that welds of one shop do not repeat those of the next. */
export function mixSeeds(a: number, b: number): number {
  const z = Math.imul(a + 0x51ed270b, 0x85ebca6b) ^ Math.imul(b + 0x3c6ef372, 0xc2b2ae35);
  return (z ^ (z >>> 13)) >>> 0;
}
