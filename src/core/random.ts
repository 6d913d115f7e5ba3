/** Seeded random numbers: the same seed gives the same sequence on every machine. */
export interface Random {
  /** Uniform in [0, 1). */
  next(): number;
  /** Uniform in [low, high). */
  uniform(low: number, high: number): number;
  /** Log-uniform in [low, high), both above 0. */
  logUniform(low: number, high: number): number;
  /** Whole number in [low, high]. */
  integer(low: number, high: number): number;
  /** Normal with the given mean and standard deviation. */
  normal(mean?: number, deviation?: number): number;
  /** One of the items, each equally likely. */
  pick<T>(items: readonly T[]): T;
  /** An independent generator for a named part, so that adding draws in one part moves no other. */
  fork(label: string): Random;
}

/** Mulberry32 (public domain, T. Ettinger): 32-bit state, enough for simulation and resampling. */
export function createRandom(seed: number | string): Random {
  const origin = typeof seed === 'number' ? seed >>> 0 : hash32(seed);
  // Signed, so that it fits a small integer: a variable of a closure that does not is allocated at each change.
  let state = origin | 0;
  let spare: number | undefined;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const standardNormal = (): number => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - next()));
    const angle = 2 * Math.PI * next();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return {
    next,
    uniform: (low, high) => low + (high - low) * next(),
    logUniform: (low, high) => low * (high / low) ** next(),
    integer: (low, high) => low + Math.floor(next() * (high - low + 1)),
    normal: (mean = 0, deviation = 1) => mean + deviation * standardNormal(),
    pick: (items) => {
      const item = items[Math.floor(next() * items.length)];
      if (item === undefined) throw new RangeError('pick() needs at least one item');
      return item;
    },
    fork: (label) => createRandom((hash32(label) ^ Math.imul(origin, 0x9e3779b1)) >>> 0),
  };
}

/** FNV-1a over UTF-16 code units. */
function hash32(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
