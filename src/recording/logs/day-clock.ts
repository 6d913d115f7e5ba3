import type { RowChunk } from './table.js';

const DAY_S = 86_400;

/** Lets the time of day go on past midnight. */
export interface DayClock {
  /** Adds whole days to the first column, in place. */
  unwrap(chunk: RowChunk): void;
  readonly midnights: number;
}

/** A step back of more than half a day is midnight; one forward by as much takes it back. */
export function createDayClock(): DayClock {
  let last = Number.NaN;
  let days = 0;
  let midnights = 0;
  return {
    unwrap(chunk) {
      const time = chunk.columns[0] as Float64Array;
      for (let i = 0; i < chunk.rows; i++) {
        const t = time[i] as number;
        if (t - last < -DAY_S / 2) midnights = Math.max(midnights, ++days);
        else if (days > 0 && t - last > DAY_S / 2 && t < DAY_S) days--;
        if (!Number.isNaN(t)) last = t;
        time[i] = t + days * DAY_S;
      }
    },
    get midnights() {
      return midnights;
    },
  };
}
