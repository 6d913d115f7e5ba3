/**
 * Sums of vectors over time in bounded memory: a fixed number of time slots that join in pairs when the
 * run outgrows them. Which slots lie within the arc is asked at the end, when that is known.
 */
export class TimedSums {
  readonly #width: number;
  readonly #slots: Float64Array[] = [];
  readonly #most: number;
  #slotS: number;

  constructor(width: number, options: { slotS: number; most: number }) {
    this.#width = width;
    this.#slotS = options.slotS;
    this.#most = options.most;
  }

  get slotS(): number {
    return this.#slotS;
  }

  /** All slots so far, in order. */
  get slots(): readonly Float64Array[] {
    return this.#slots;
  }

  /** The vector to add to for what happens at `timeS`; times before 0 count to the first slot. */
  at(timeS: number): Float64Array {
    let index = Math.max(0, Math.floor(timeS / this.#slotS + 1e-9));
    while (index >= this.#most) {
      this.#join();
      index = Math.floor(timeS / this.#slotS + 1e-9);
    }
    while (this.#slots.length <= index) this.#slots.push(new Float64Array(this.#width));
    return this.#slots[index]!;
  }

  /** Sum of the slots within the arc intervals; of those that touch them where none lies wholly within. */
  within(arcIntervals: readonly { startS: number; endS: number }[]): Float64Array {
    const inside = this.#pick(arcIntervals, (s, from, to) => from >= s.startS && to <= s.endS);
    const chosen =
      inside.length > 0
        ? inside
        : this.#pick(arcIntervals, (s, from, to) => from < s.endS && to > s.startS);
    const sum = new Float64Array(this.#width);
    for (const slot of chosen) for (let k = 0; k < sum.length; k++) sum[k] = sum[k]! + slot[k]!;
    return sum;
  }

  #pick(
    arcIntervals: readonly { startS: number; endS: number }[],
    fits: (arcInterval: { startS: number; endS: number }, fromS: number, toS: number) => boolean,
  ): Float64Array[] {
    return this.#slots.filter((_, k) =>
      arcIntervals.some((one) => fits(one, k * this.#slotS, (k + 1) * this.#slotS)),
    );
  }

  #join(): void {
    const half = Math.ceil(this.#slots.length / 2);
    for (let k = 0; k < half; k++) {
      const sum = this.#slots[2 * k]!;
      const other = this.#slots[2 * k + 1];
      if (other) for (let n = 0; n < sum.length; n++) sum[n] = sum[n]! + other[n]!;
      this.#slots[k] = sum;
    }
    this.#slots.length = half;
    this.#slotS *= 2;
  }
}
