import { NEWEST_CELLS, WINDOW_CELLS } from './grid.js';
import { WindowFeatures, type WindowInput } from './window-features.js';

/**
 * Features of the newest half second, for answers that may not wait for a whole window. It is laid down
 * twice, so that it fills a window and every feature keeps its meaning and scale: beats stay at their rates,
 * spreads are those of the half second, and only the seam is foreign.
 */
export class NewestHalf {
  readonly #features: WindowFeatures;
  readonly #cells = Array.from({ length: 4 }, () => new Float64Array(WINDOW_CELLS));

  constructor(rateHz: number) {
    this.#features = new WindowFeatures(rateHz);
  }

  /** @param input cells of which those before `end` are filled, and the spectrum of the newest */
  compute({ full, low, high, fourth, ...rest }: WindowInput, end: number): Float64Array {
    const twice = (cells: Float64Array, i: number): Float64Array => {
      const newest = cells.subarray(end - NEWEST_CELLS, end);
      this.#cells[i]!.set(newest);
      this.#cells[i]!.set(newest, NEWEST_CELLS);
      return this.#cells[i]!;
    };
    return this.#features.compute({
      ...rest,
      full: twice(full, 0),
      low: twice(low, 1),
      high: twice(high, 2),
      fourth: twice(fourth, 3),
    });
  }
}
