import { ColumnBuffer } from './column-buffer.js';
import { countGap, emptyCounts, type Grid } from './grid.js';
import type { RowChunk } from './table.js';
import type { TimeBase } from './time-base.js';

/** Between rows further apart than this many steps nothing is drawn: that is a gap. */
const GAP_STEPS = 10;

/**
 * Draws straight lines between unevenly spaced rows (rising times) and reads them off at the places
 * of a uniform grid that starts at the first row. Places inside gaps hold NaN. Rows with the stamp of
 * the row before are left out. A value that is not finite makes the places beside it NaN.
 *
 * @throws ArcError `gap-too-long`, `mostly-missing`.
 */
export function createLinearGrid(columns: number, base: TimeBase, fileName: string): Grid {
  const buffer = new ColumnBuffer(columns);
  const counts = emptyCounts();
  const stepS = 1 / base.rateHz;
  const previous = new Float64Array(columns);
  const values = new Float64Array(columns);
  let originS = Number.NaN;
  let previousS = Number.NaN;
  let place = 0;

  const remember = (chunk: RowChunk, row: number): void => {
    previousS = (chunk.columns[0] as Float64Array)[row] as number;
    for (let c = 0; c < columns; c++) {
      previous[c] = (chunk.columns[c + 1] as Float64Array)[row] as number;
    }
  };
  /** The values at the current place, on the line from the row before to this one. */
  const drawLine = (chunk: RowChunk, row: number, spanS: number, isGap: boolean): void => {
    const share = Math.min(1, Math.max(0, (originS + place * stepS - previousS) / spanS));
    for (let c = 0; c < columns; c++) {
      const from = previous[c] as number;
      const to = (chunk.columns[c + 1] as Float64Array)[row] as number;
      if (share === 0) values[c] = from;
      else if (share === 1) values[c] = to;
      else values[c] = isGap ? Number.NaN : from + share * (to - from);
    }
    buffer.appendValues(values);
  };

  return {
    counts,
    *push(chunk) {
      const time = chunk.columns[0] as Float64Array;
      counts.rows += chunk.rows;
      for (let i = 0; i < chunk.rows; i++) {
        const t = time[i] as number;
        if (t === previousS) {
          counts.crowded++;
          continue;
        }
        if (Number.isNaN(originS)) {
          originS = t;
          previousS = t - stepS;
          drawLine(chunk, i, stepS, false);
          place = 1;
        }
        const last = Math.floor((t - originS) * base.rateHz * (1 + 1e-12));
        const spanS = t - previousS;
        const isGap = spanS > GAP_STEPS * stepS;
        if (isGap) countGap(counts, Math.max(0, last - place + 1), spanS, t, fileName);
        for (; place <= last; place++) {
          drawLine(chunk, i, spanS, isGap);
          if (buffer.full) yield buffer.take();
        }
        remember(chunk, i);
      }
      if (buffer.length > 0) yield buffer.take();
    },
  };
}
