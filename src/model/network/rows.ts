/** Feature vectors that come in piece by piece, of which the newest are kept. */
export class RowQueue {
  readonly width: number;
  data: Float32Array;
  /** Rows held. */
  count = 0;

  constructor(width: number, zeros: number) {
    this.width = width;
    this.data = new Float32Array(Math.max(64, 2 * zeros) * width);
    this.count = zeros;
  }

  push(rows: Float32Array): void {
    const used = this.count * this.width;
    if (used + rows.length > this.data.length) {
      const grown = new Float32Array(2 * (used + rows.length));
      grown.set(this.data.subarray(0, used));
      this.data = grown;
    }
    this.data.set(rows, used);
    this.count += rows.length / this.width;
  }

  pushZeros(count: number): void {
    this.push(new Float32Array(count * this.width));
  }

  /** Forgets the oldest rows. */
  drop(count: number): void {
    this.data.copyWithin(0, count * this.width, this.count * this.width);
    this.count -= count;
  }
}
