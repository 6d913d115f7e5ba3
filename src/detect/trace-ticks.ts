/** How a trace is cut into ticks of about a millisecond, and how many ticks the mains delays span. */
export interface TickPlan {
  /** Samples a tick. */
  samples: number;
  /** Length of a tick in seconds. */
  seconds: number;
  /** Ticks in 20 ms: a difference over this lag removes 50 Hz and all its multiples. */
  lag50: number;
  /** Ticks in 50 ms: the same for 60 Hz (three periods). */
  lag60: number;
}

/**
 * Chooses the tick between 0.4 and 1.3 ms whose multiples come nearest to both mains delays, since a lag
 * that is off by a part of a tick lets hum through.
 */
export function planTicks(sampleRateHz: number): TickPlan {
  const fewest = Math.max(1, Math.ceil(0.0004 * sampleRateHz));
  const most = Math.max(fewest, Math.floor(0.0013 * sampleRateHz));
  const step = Math.max(1, Math.floor((most - fewest) / 64));
  let best = fewest;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (let samples = fewest; samples <= most; samples += step) {
    const ticks50 = (0.02 * sampleRateHz) / samples;
    const ticks60 = (0.05 * sampleRateHz) / samples;
    const off = Math.abs(ticks50 - Math.round(ticks50)) + Math.abs(ticks60 - Math.round(ticks60));
    // Coarser ticks are cheaper: of equally good ones take the longest.
    const miss = off * samples - 1e-6 * samples;
    if (miss < bestMiss) {
      bestMiss = miss;
      best = samples;
    }
  }
  return {
    samples: best,
    seconds: best / sampleRateHz,
    lag50: Math.max(1, Math.round((0.02 * sampleRateHz) / best)),
    lag60: Math.max(2, Math.round((0.05 * sampleRateHz) / best)),
  };
}

/**
 * Variance of `y[t] − y[t − lag]` about its straight line over the last `span` ticks, halved: what mains
 * hum, offset, ramps and the slow discharge of a source leave near zero.
 */
export class CombVariance {
  readonly #lag: number;
  readonly #values: Float64Array;
  readonly #differences: Float64Array;
  #count = 0;
  #filled = 0;
  #sum = 0;
  /** Sum of age-ranked differences: the oldest has rank 0. */
  #ranked = 0;
  #squares = 0;

  constructor(lag: number, span: number) {
    this.#lag = lag;
    this.#values = new Float64Array(lag);
    this.#differences = new Float64Array(span);
  }

  /** Takes the next tick; answers the variance, NaN until a quarter of the span is filled. */
  push(value: number): number {
    const slot = this.#count % this.#lag;
    const difference = value - this.#values[slot]!;
    this.#values[slot] = value;
    this.#count++;
    if (this.#count <= this.#lag) return Number.NaN;
    this.#add(difference);
    const n = this.#filled;
    if (n * 4 < this.#differences.length || n < 4) return Number.NaN;
    const middle = (n - 1) / 2;
    const slope = (this.#ranked - middle * this.#sum) / ((n * (n * n - 1)) / 12);
    const about = this.#squares - (this.#sum * this.#sum) / n;
    const line = (slope * slope * n * (n * n - 1)) / 12;
    return Math.max(0, about - line) / n / 2;
  }

  /** Mean change over the lag, which a steady slope leaves; NaN while empty. */
  get drift(): number {
    return this.#sum / this.#filled;
  }

  #add(difference: number): void {
    const span = this.#differences.length;
    const at = (this.#count - 1) % span;
    if (this.#filled === span) {
      const old = this.#differences[at]!;
      this.#sum -= old;
      this.#squares -= old * old;
      this.#ranked -= this.#sum;
    } else this.#filled++;
    this.#differences[at] = difference;
    this.#sum += difference;
    this.#squares += difference * difference;
    this.#ranked += (this.#filled - 1) * difference;
    // Running sums gather rounding errors, so they are rebuilt once a round.
    if (at === 0 && this.#filled === span) this.#rebuild();
  }

  #rebuild(): void {
    this.#sum = 0;
    this.#squares = 0;
    this.#ranked = 0;
    const span = this.#differences.length;
    for (let rank = 0; rank < span; rank++) {
      const difference = this.#differences[(this.#count + rank) % span]!;
      this.#sum += difference;
      this.#squares += difference * difference;
      this.#ranked += rank * difference;
    }
  }
}
