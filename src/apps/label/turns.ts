/** Lets a few of many go on at the same time, the others in the order they came. */
export class Turns {
  #free: number;
  readonly #waiting: (() => void)[] = [];

  constructor(atOnce: number) {
    this.#free = atOnce;
  }

  async take<T>(work: () => Promise<T>): Promise<T> {
    if (this.#free > 0) this.#free -= 1;
    else await new Promise<void>((resolve) => this.#waiting.push(resolve));
    try {
      return await work();
    } finally {
      const next = this.#waiting.shift();
      if (next) next();
      else this.#free += 1;
    }
  }
}
