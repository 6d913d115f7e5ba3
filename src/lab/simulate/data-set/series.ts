import type { Span } from './format.js';

type Numbers = Uint16Array | Int16Array | Float32Array;

/** Series of numbers put one after the other, as a file of a shard holds them. */
export class SeriesFile<T extends Numbers> {
  private readonly pieces: T[] = [];
  private length = 0;

  constructor(
    /** Numbers of one row; spans count rows. */
    readonly width = 1,
  ) {}

  /** Adds a series; where it lies. */
  add(piece: T): Span {
    const span = { offset: this.length, length: piece.length / this.width };
    this.pieces.push(piece);
    this.length += span.length;
    return span;
  }

  /** Rows so far. */
  get rows(): number {
    return this.length;
  }

  /** All pieces, in order. */
  all(): readonly T[] {
    return this.pieces;
  }
}

/** Columns of `events.npy`. */
export const EVENT_COLUMNS = 4;

/** The series of one shard. */
export class ArcSeries {
  readonly sound = new SeriesFile<Uint16Array>();
  readonly parts = new SeriesFile<Uint16Array>();
  readonly traces = new SeriesFile<Int16Array>();
  readonly events = new SeriesFile<Float32Array>(EVENT_COLUMNS);
}
