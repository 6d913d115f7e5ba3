/** Small deterministic random numbers: every draw of this world comes from here. */

/** A stream of random numbers fixed by a seed and a word that names its use. */
export class Random {
  private a: number;
  private b: number;
  private c: number;
  private counter = 1;
  private spare: number | null = null;

  constructor(seed: number, use = '') {
    // The seed and the letters of the use are stirred into three words (multiply and shift).
    let h = 0x9e3779b9 ^ (seed | 0);
    const stir = (v: number): number => {
      h = Math.imul(h ^ v, 0x85ebca6b);
      h ^= h >>> 13;
      h = Math.imul(h, 0xc2b2ae35);
      h ^= h >>> 16;
      return h;
    };
    stir(Math.floor(seed / 4294967296));
    for (let i = 0; i < use.length; i++) stir(use.charCodeAt(i));
    this.a = stir(0x51ed270b);
    this.b = stir(0x2545f491);
    this.c = stir(0x6a09e667);
    for (let i = 0; i < 12; i++) this.next();
  }

  /** Even between 0 and 1 (1 not included). The generator is Doty-Humphrey's small fast counter. */
  next(): number {
    const t = (this.a + this.b + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = ((this.c << 21) | (this.c >>> 11)) + t;
    return (t >>> 0) / 4294967296;
  }

  /** Even between two values. */
  range(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Even in the logarithm between two positive values. */
  logRange(low: number, high: number): number {
    return low * (high / low) ** this.next();
  }

  /** A whole number, both ends included. */
  int(low: number, high: number): number {
    return low + Math.floor((high - low + 1) * this.next());
  }

  /** Normal with mean 0 and standard deviation 1 (polar method). */
  gauss(): number {
    if (this.spare !== null) {
      const s = this.spare;
      this.spare = null;
      return s;
    }
    for (;;) {
      const u = 2 * this.next() - 1;
      const v = 2 * this.next() - 1;
      const q = u * u + v * v;
      if (q > 0 && q < 1) {
        const f = Math.sqrt((-2 * Math.log(q)) / q);
        this.spare = v * f;
        return u * f;
      }
    }
  }

  /** Cheap nearly normal noise (three even draws), for long runs of noise; standard deviation 1. */
  noise(): number {
    return 2 * (this.next() + this.next() + this.next()) - 3;
  }

  /** Log-normal with a median and the standard deviation of its logarithm. */
  logNormal(median: number, sigma: number): number {
    return median * Math.exp(sigma * this.gauss());
  }

  chance(p: number): boolean {
    return this.next() < p;
  }

  pick<T>(list: readonly T[]): T {
    return list[Math.min(list.length - 1, Math.floor(this.next() * list.length))] as T;
  }

  /** One of several values with weights. */
  weighted<T>(list: readonly (readonly [T, number])[]): T {
    let sum = 0;
    for (const [, w] of list) sum += w;
    let x = this.next() * sum;
    for (const [v, w] of list) {
      x -= w;
      if (x <= 0) return v;
    }
    return (list[list.length - 1] as readonly [T, number])[0];
  }
}
