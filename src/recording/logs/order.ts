import { ArcError } from '../../core/index.js';
import { concat } from '../../dsp/index.js';
import type { RowChunk } from './table.js';

/** So many rows are held back, so that a row may come that much too late and still find its place. */
export const ORDER_WINDOW_ROWS = 4096;

/** Rows in rising order of their first column (time). */
export interface RowSorter {
  /** Rows whose place is settled. The arrays are valid until the next call. */
  push(chunk: RowChunk): RowChunk;
  flush(): RowChunk;
  /** How many rows came before their predecessor. */
  readonly outOfOrder: number;
  /** The largest step back seen, in seconds. */
  readonly largestStepBackS: number;
}

/**
 * Puts rows in order within a bounded window. Rows already in order pass through untouched.
 *
 * @param columns number of columns, time first
 * @param fileName how the file is named in the error
 * @throws ArcError `out-of-order` when a row comes later than the window allows.
 */
export function createRowSorter(columns: number, fileName: string): RowSorter {
  let held: Float64Array[] = Array.from({ length: columns }, () => new Float64Array(0));
  let settled = Number.NEGATIVE_INFINITY;
  let last = Number.NEGATIVE_INFINITY;
  let outOfOrder = 0;
  let largestStepBackS = 0;

  const release = (all: Float64Array[], keep: number): RowChunk => {
    const count = Math.max(0, (all[0]?.length ?? 0) - keep);
    const out = all.map((column) => column.subarray(0, count));
    held = all.map((column) => column.slice(count));
    if (count > 0) settled = out[0]?.[count - 1] ?? settled;
    return { rows: count, columns: out };
  };

  return {
    push(chunk) {
      let sorted = true;
      const time = chunk.columns[0] as Float64Array;
      for (let i = 0; i < chunk.rows; i++) {
        const t = time[i] as number;
        if (t < last) {
          outOfOrder++;
          sorted = false;
          if (last - t > largestStepBackS) largestStepBackS = last - t;
        }
        last = t;
      }
      const all = held.map((column, c) =>
        concat([column, (chunk.columns[c] as Float64Array).subarray(0, chunk.rows)]),
      );
      // While disorder lasts, rows held back may themselves be out of order with the new ones.
      const ordered = sorted && isRising(all[0] as Float64Array) ? all : sortRows(all);
      const first = ordered[0]?.[0];
      if (first !== undefined && first < settled) throw tooLate(fileName, first, settled);
      return release(ordered, ORDER_WINDOW_ROWS);
    },
    flush: () => release(held, 0),
    get outOfOrder() {
      return outOfOrder;
    },
    get largestStepBackS() {
      return largestStepBackS;
    },
  };
}

function isRising(times: Float64Array): boolean {
  for (let i = 1; i < times.length; i++)
    if ((times[i] as number) < (times[i - 1] as number)) return false;
  return true;
}

/** Stable, so that rows with one stamp keep the order of the file. */
function sortRows(columns: Float64Array[]): Float64Array[] {
  const time = columns[0] as Float64Array;
  const order = Uint32Array.from(time, (_, i) => i).sort(
    (a, b) => (time[a] as number) - (time[b] as number) || a - b,
  );
  return columns.map((column) => Float64Array.from(order, (i) => column[i] as number));
}

function tooLate(fileName: string, timeS: number, settledS: number): ArcError {
  return new ArcError({
    code: 'out-of-order',
    what: `${fileName} has a row of ${say(timeS)} s (counted from the first) more than ${ORDER_WINDOW_ROWS} rows behind those of ${say(settledS)} s.`,
    expected: `rows by rising time, or at most ${ORDER_WINDOW_ROWS} rows late`,
    todo: 'Sort the file by its time column, or cut it where the clock starts again.',
  });
}

function say(value: number): string {
  return String(Number(value.toPrecision(6)));
}
