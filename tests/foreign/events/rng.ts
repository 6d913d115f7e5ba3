/**
 * A small seeded generator (sfc32) and the draws that this world needs. The same seed gives the
 * same numbers.
 */
export class Rng {
  private a: number;
  private b: number;
  private c: number;
  private d = 1;

  constructor(seed: number, stream = 0) {
    this.a = (seed ^ 0x5bd1e995) | 0;
    this.b = Math.imul(seed + 0x632be5ab, 0x85157af5) | 0;
    this.c = Math.imul(stream + 0x1b873593, 0x2c1b3c6d) | 0;
    for (let i = 0; i < 20; i++) this.next();
  }

  /** Uniform in [0, 1). */
  next(): number {
    const t = (((this.a + this.b) | 0) + this.d) | 0;
    this.d = (this.d + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = (((this.c << 21) | (this.c >>> 11)) + t) | 0;
    return (t >>> 0) / 4294967296;
  }

  /** Uniform in [lo, hi). */
  range(lo: number, hi: number): number {
    return lo + (hi - lo) * this.next();
  }

  /** Evenly spread on a logarithmic scale; both ends above 0. */
  logRange(lo: number, hi: number): number {
    return lo * (hi / lo) ** this.next();
  }

  /** A whole number from lo to hi, both included. */
  int(lo: number, hi: number): number {
    return lo + Math.floor(this.next() * (hi - lo + 1));
  }

  chance(p: number): boolean {
    return this.next() < p;
  }

  pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.next() * list.length)] as T;
  }

  /** Picks by weights that need not add up to 1. */
  weighted<T>(list: readonly (readonly [T, number])[]): T {
    let left = this.next() * list.reduce((s, x) => s + x[1], 0);
    for (const [value, weight] of list) {
      left -= weight;
      if (left < 0) return value;
    }
    return (list[list.length - 1] as readonly [T, number])[0];
  }

  /** Standard normal (Box and Muller, one of the pair). */
  normal(): number {
    return Math.sqrt(-2 * Math.log(1 - this.next())) * Math.cos(2 * Math.PI * this.next());
  }

  /** Cheap, nearly normal noise for long arrays: four uniforms, unit variance. */
  fuzz(): number {
    return (this.next() + this.next() + this.next() + this.next() - 2) * Math.sqrt(3);
  }

  /** Lognormal with mean 1 and the given coefficient of variation. */
  spread(cv: number): number {
    const s2 = Math.log(1 + cv * cv);
    return Math.exp(Math.sqrt(s2) * this.normal() - s2 / 2);
  }

  /** Gamma with mean 1 and the given coefficient of variation (Marsaglia and Tsang). */
  gamma(cv: number): number {
    const k = 1 / (cv * cv);
    const shape = k < 1 ? k + 1 : k;
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - this.next()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
        const boost = k < 1 ? (1 - this.next()) ** (1 / k) : 1;
        return (d * v * boost) / k;
      }
    }
  }

  /** A generator of its own for one part, so that parts do not shift each other. */
  fork(stream: number): Rng {
    return new Rng(Math.floor(this.next() * 4294967296) | 0, stream);
  }
}
