import type { StripCell } from './events.js';

const CELLS = 60;

/** What was seen in each of the last 60 s of a stream. */
export class Strip {
  readonly cells: StripCell[] = [];
  #second = -1;

  /** Says what is so at a time; the last word of a second stands, and seconds without one repeat it. */
  set(timeS: number, cell: StripCell): void {
    const second = Math.floor(timeS);
    if (second === this.#second) {
      this.cells[this.cells.length - 1] = cell;
      return;
    }
    const missing = this.#second < 0 ? 1 : Math.min(CELLS, second - this.#second);
    const last = this.cells.at(-1) ?? cell;
    for (let i = 1; i < missing; i++) this.cells.push(last);
    this.cells.push(cell);
    this.#second = second;
    while (this.cells.length > CELLS) this.cells.shift();
  }
}
