import { ArcError } from '../../core/index.js';
import { ColumnBuffer } from './column-buffer.js';
import type { RowChunk } from './table.js';
import type { TimeBase } from './time-base.js';

/** A gap longer than this is two recordings in one file. */
const MAX_GAP_S = 600;
/** Beyond this many missing places the places must not outnumber the rows by far. */
const MANY_MISSING = 20e6;
/** More crowded rows than this share (and more than a few) mean that the rate changed. */
const MAX_CROWDED_SHARE = 0.02;

/** What was found on the way; filled while reading. */
export interface GridCounts {
  rows: number;
  /** Places without a row. */
  missing: number;
  gaps: number;
  longestGapS: number;
  /** Rows left out because their place was taken. */
  crowded: number;
}

/** Puts rows (rising times in the first column) on a uniform grid. Places without a row hold NaN. */
export interface Grid {
  /** Columns without the time, in pieces of bounded length that belong to the caller. */
  push(chunk: RowChunk): Iterable<Float64Array[]>;
  readonly counts: GridCounts;
}

export function emptyCounts(): GridCounts {
  return { rows: 0, missing: 0, gaps: 0, longestGapS: 0, crowded: 0 };
}

/**
 * Gives each row of a steady table the next place on the grid, so that the samples come out exactly as
 * they stand in the file. A stamp too far ahead opens a gap, filled with NaN; a stamp too far behind
 * means that the place is taken. The grid follows a slowly drifting clock.
 *
 * @throws ArcError `gap-too-long`, `rate-changed`.
 */
export function createSteadyGrid(columns: number, base: TimeBase, fileName: string): Grid {
  const buffer = new ColumnBuffer(columns);
  const counts = emptyCounts();
  const stepS = 1 / base.rateHz;
  const toleranceS = base.toleranceSteps * stepS;
  let nextS = Number.NaN;

  /** Rows from `start` on, up to a gap or the end; gives the row where it stopped. */
  const placeRows = (chunk: RowChunk, start: number): number => {
    const time = chunk.columns[0] as Float64Array;
    let i = start;
    for (; i < chunk.rows; i++) {
      const off = (time[i] as number) - nextS;
      if (off > toleranceS) break;
      if (off < -toleranceS) {
        counts.crowded++;
        continue;
      }
      nextS += stepS + 0.02 * off;
      buffer.append(chunk, i);
    }
    return i;
  };

  return {
    counts,
    *push(chunk) {
      const time = chunk.columns[0] as Float64Array;
      if (counts.rows === 0 && chunk.rows > 0) nextS = time[0] as number;
      counts.rows += chunk.rows;
      for (let i = placeRows(chunk, 0); i < chunk.rows; i = placeRows(chunk, i)) {
        const behindS = (time[i] as number) - nextS;
        let places = Math.round(behindS * base.rateHz);
        countGap(counts, places, behindS, time[i] as number, fileName);
        nextS += places * stepS;
        while (places > 0) {
          places -= buffer.appendMissing(places);
          if (buffer.full) yield buffer.take();
        }
      }
      if (counts.crowded > 100 && counts.crowded > MAX_CROWDED_SHARE * counts.rows) {
        throw rateChanged(fileName, base.rateHz, nextS);
      }
      if (buffer.length > 0) yield buffer.take();
    },
  };
}

/**
 * Counts a gap and refuses one that no single recording has.
 *
 * @throws ArcError `gap-too-long`, `mostly-missing`.
 */
export function countGap(
  counts: GridCounts,
  places: number,
  gapS: number,
  timeS: number,
  fileName: string,
): void {
  if (!(gapS <= MAX_GAP_S)) {
    throw new ArcError({
      code: 'gap-too-long',
      what: `${fileName} has no rows for ${gapS.toPrecision(4)} s up to ${say(timeS)} s after its first row.`,
      expected: `gaps of at most ${MAX_GAP_S} s`,
      todo: 'Cut the file in two there; if its times are not in seconds, write the unit into the header.',
    });
  }
  counts.missing += places;
  counts.gaps++;
  counts.longestGapS = Math.max(counts.longestGapS, gapS);
  if (counts.missing > MANY_MISSING && counts.missing > 4 * counts.rows) {
    throw new ArcError({
      code: 'mostly-missing',
      what: `${fileName}: up to ${say(timeS)} s after the first row, ${counts.missing} samples are missing and ${counts.rows} are there.`,
      expected: 'a trace with few gaps',
      todo: 'Cut the file at its gaps, or state the right time column.',
    });
  }
}

function rateChanged(fileName: string, rateHz: number, timeS: number): ArcError {
  return new ArcError({
    code: 'rate-changed',
    what: `${fileName} begins at ${rateHz.toPrecision(6)} rows a second, but up to ${say(timeS)} s after the first row they come faster than that.`,
    expected: 'one sampling rate throughout',
    todo: 'Cut the file where the rate changes.',
  });
}

function say(value: number): string {
  return String(Number(value.toPrecision(6)));
}
