import type { RowChunk } from './table.js';

/** Pieces handed on are about this long. */
const PIECE = 32768;

/** Collects samples of several columns into pieces of bounded length. */
export class ColumnBuffer {
  private columns: Float64Array[];
  length = 0;

  constructor(private readonly count: number) {
    this.columns = this.fresh(PIECE);
  }

  /** True when the piece should be taken; rows may still be appended. */
  get full(): boolean {
    return this.length >= PIECE;
  }

  /** Adds one row of a chunk, whose first column (time) is left out. */
  append(chunk: RowChunk, row: number): void {
    const at = this.next();
    for (let c = 0; c < this.count; c++) {
      (this.columns[c] as Float64Array)[at] = (chunk.columns[c + 1] as Float64Array)[row] as number;
    }
  }

  /** Adds one value a column. */
  appendValues(values: Float64Array): void {
    const at = this.next();
    for (let c = 0; c < this.count; c++) {
      (this.columns[c] as Float64Array)[at] = values[c] as number;
    }
  }

  /** Adds up to so many NaN places, as far as the piece goes; gives how many. */
  appendMissing(places: number): number {
    const added = Math.max(1, Math.min(places, PIECE - this.length));
    for (let i = 0; i < added; i++) {
      const at = this.next();
      for (let c = 0; c < this.count; c++) (this.columns[c] as Float64Array)[at] = Number.NaN;
    }
    return added;
  }

  /** Everything held, which then belongs to the caller. */
  take(): Float64Array[] {
    const out = this.columns.map((column) => column.subarray(0, this.length));
    this.columns = this.fresh(PIECE);
    this.length = 0;
    return out;
  }

  private next(): number {
    const capacity = this.columns[0]?.length ?? 0;
    if (this.length >= capacity) {
      const larger = this.fresh(2 * capacity);
      larger.forEach((column, c) => {
        column.set(this.columns[c] as Float64Array);
      });
      this.columns = larger;
    }
    return this.length++;
  }

  private fresh(size: number): Float64Array[] {
    return Array.from({ length: this.count }, () => new Float64Array(size));
  }
}
