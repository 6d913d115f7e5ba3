import type { Note } from '../../core/index.js';

/** One column (or dataset) of a log as found in the file, before anyone decides what it means. */
export interface LogColumn {
  /** Name as written, or `column 3` where the file gives none. */
  name: string;
  /** True when the file gave no name. */
  unnamed: boolean;
  /** Unit as written beside or below the name; absent where none is given. */
  unit?: string;
  /** Set for clock text (already turned into seconds by the reader). */
  clock?: boolean;
  /** First values, at most a few hundred; NaN where a cell holds no number. */
  preview: Float64Array;
}

/** Consecutive rows, one array a wanted column. The arrays may be reused by the next chunk. */
export interface RowChunk {
  rows: number;
  columns: Float64Array[];
}

/** What every log format is turned into; one assembler makes recordings out of all of them. */
export interface LogTable {
  format: string;
  /** For messages. */
  fileName: string;
  columns: LogColumn[];
  /** Rate that the file itself states (metadata line, attribute), with where it was found. */
  statedRate?: { rateHz: number; from: string };
  /**
   * Rows that these columns have in common, where the format knows in advance.
   *
   * @throws ArcError `length-mismatch`.
   */
  rowsOf?(wanted: readonly number[]): number;
  /** Filled while reading too. */
  notes: Note[];
  /** Chunks of the wanted columns (indexes from 0), in the order asked for. */
  read(wanted: readonly number[]): AsyncIterable<RowChunk>;
}
