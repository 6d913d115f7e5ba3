/** Samples of one kept piece, a channel each. */
export interface Piece {
  startSample: number;
  channels: Float64Array[];
}

/**
 * Keeps pieces with every sample, evenly spread over a run of unknown length: piece k begins at
 * k·`every`; when there are more than `most`, every other one goes and `every` doubles.
 */
export class CloseUps {
  readonly #length: number;
  readonly #most: number;
  readonly #channels: number;
  #every: number;
  #pieces: Piece[] = [];
  #open: Piece | undefined;
  #filled = 0;
  #position = 0;

  constructor(options: { samples: number; every: number; most: number; channels: number }) {
    this.#length = options.samples;
    this.#every = Math.max(options.every, options.samples);
    this.#most = options.most;
    this.#channels = options.channels;
  }

  push(channels: readonly Float64Array[]): void {
    const count = channels[0]!.length;
    for (let from = 0; from < count; ) {
      if (!this.#open) {
        const next = Math.ceil(this.#position / this.#every) * this.#every;
        const skip = Math.min(next - this.#position, count - from);
        this.#position += skip;
        from += skip;
        if (from === count) return;
        this.#begin();
      }
      from += this.#take(channels, from, count);
    }
  }

  /** Complete pieces, in order. */
  pieces(): Piece[] {
    return this.#pieces;
  }

  #begin(): void {
    const channels = Array.from({ length: this.#channels }, () => new Float64Array(this.#length));
    this.#open = { startSample: this.#position, channels };
    this.#filled = 0;
  }

  #take(channels: readonly Float64Array[], from: number, count: number): number {
    const open = this.#open!;
    const take = Math.min(this.#length - this.#filled, count - from);
    for (let c = 0; c < this.#channels; c++)
      open.channels[c]!.set(channels[c]!.subarray(from, from + take), this.#filled);
    this.#filled += take;
    this.#position += take;
    if (this.#filled === this.#length) this.#keep(open);
    return take;
  }

  #keep(piece: Piece): void {
    this.#open = undefined;
    this.#pieces.push(piece);
    if (this.#pieces.length <= this.#most) return;
    this.#every *= 2;
    this.#pieces = this.#pieces.filter((one) => one.startSample % this.#every === 0);
  }
}
