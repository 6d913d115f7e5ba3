import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { ChosenColumn } from './choose-columns.js';
import { createDayClock } from './day-clock.js';
import { BRIDGED_S } from './fill.js';
import { createSteadyGrid, type GridCounts } from './grid.js';
import { createRowSorter, type RowSorter } from './order.js';
import { createLinearGrid } from './resample.js';
import type { LogTable, RowChunk } from './table.js';
import { planTime, type TimePlan } from './time-unit.js';

/** Samples on a uniform grid, NaN where there is none. */
export interface GriddedRows {
  rateHz: number;
  /** The arrays belong to the caller. */
  pieces: AsyncIterable<Float64Array[]>;
  /** Notes on what the rows were like; complete after the last piece. */
  closing(): Note[];
}

/** Rows judged for their rhythm before the first is handed on. */
const HEAD_ROWS = 16384;

/**
 * Puts the rows of a table with a time column in order and on a grid: day clock, unit, sorting within a
 * window, then gaps or resampling.
 *
 * @throws ArcError `no-rows`, `out-of-order`, `gap-too-long`, `rate-changed` and what the time plan finds.
 */
export async function timedRows(
  table: LogTable,
  time: ChosenColumn,
  wanted: readonly number[],
  statedRateHz: number | undefined,
): Promise<GriddedRows> {
  const chunks = table.read([time.index, ...wanted])[Symbol.asyncIterator]();
  const clock = time.column.clock ? createDayClock() : undefined;
  let unstamped = 0;
  const next = async (): Promise<RowChunk | undefined> => {
    const found = await chunks.next();
    if (found.done) return undefined;
    const stamped = dropUnstamped(found.value);
    unstamped += found.value.rows - stamped.rows;
    clock?.unwrap(stamped);
    return stamped;
  };
  const head = await readHead(next);
  if (head.rows === 0) throw noRows(table.fileName, time);
  const stamps = (head.columns[0] as Float64Array).slice().sort();
  let plan: TimePlan;
  try {
    plan = planTime(table.fileName, time, stamps, statedRateHz);
  } catch (error) {
    await chunks.return?.();
    throw error;
  }
  table.notes.push(...plan.notes);
  const sorter = createRowSorter(wanted.length + 1, table.fileName);
  const createGrid = plan.base.kind === 'uneven' ? createLinearGrid : createSteadyGrid;
  const grid = createGrid(wanted.length, plan.base, table.fileName);
  // Counted from the first row: dates lose digits when they are turned into seconds as they stand.
  const origin = stamps[0] as number;
  const pieces = async function* (): AsyncGenerator<Float64Array[]> {
    for (let chunk: RowChunk | undefined = head; chunk !== undefined; chunk = await next()) {
      toSeconds(chunk, origin, plan.factor);
      yield* grid.push(sorter.push(chunk));
    }
    yield* grid.push(sorter.flush());
  };
  return {
    rateHz: plan.base.rateHz,
    pieces: pieces(),
    closing: () => closingNotes(sorter, grid.counts, unstamped, clock?.midnights ?? 0),
  };
}

async function readHead(next: () => Promise<RowChunk | undefined>): Promise<RowChunk> {
  const chunks: RowChunk[] = [];
  let rows = 0;
  while (rows < HEAD_ROWS) {
    const chunk = await next();
    if (chunk === undefined) break;
    chunks.push({ rows: chunk.rows, columns: chunk.columns.map((c) => c.slice(0, chunk.rows)) });
    rows += chunk.rows;
  }
  const columns = (chunks[0]?.columns ?? []).map((_, c) => {
    const out = new Float64Array(rows);
    let at = 0;
    for (const chunk of chunks) {
      out.set(chunk.columns[c] as Float64Array, at);
      at += chunk.rows;
    }
    return out;
  });
  return { rows, columns };
}

/** Leaves out rows whose time is missing or not finite. */
function dropUnstamped(chunk: RowChunk): RowChunk {
  const time = chunk.columns[0] as Float64Array;
  let kept = 0;
  for (let i = 0; i < chunk.rows; i++) {
    if (!Number.isFinite(time[i])) continue;
    if (kept !== i) for (const column of chunk.columns) column[kept] = column[i] as number;
    kept++;
  }
  return { rows: kept, columns: chunk.columns };
}

function toSeconds(chunk: RowChunk, origin: number, factor: number): void {
  const time = chunk.columns[0] as Float64Array;
  for (let i = 0; i < chunk.rows; i++) time[i] = ((time[i] as number) - origin) * factor;
}

function closingNotes(
  sorter: RowSorter,
  counts: GridCounts,
  unstamped: number,
  midnights: number,
): Note[] {
  const notes: Note[] = [];
  if (sorter.outOfOrder > 0) {
    const { outOfOrder: rows, largestStepBackS } = sorter;
    notes.push(note('rows-reordered', { rows, largestStepBackS }));
  }
  if (counts.gaps > 0) {
    const { gaps, missing: missingSamples, longestGapS: longestS } = counts;
    notes.push(note('gaps', { gaps, missingSamples, longestS, bridgedS: BRIDGED_S }));
  }
  if (counts.crowded > 0) notes.push(note('crowded-rows', { rows: counts.crowded }));
  if (unstamped > 0) notes.push(note('rows-without-time', { rows: unstamped }));
  if (midnights > 0) notes.push(note('midnight'));
  return notes;
}

function noRows(fileName: string, time: ChosenColumn): ArcError {
  return new ArcError({
    code: 'no-rows',
    what: `${fileName} has no row with a time in “${time.column.name}”.`,
    expected: 'rows of numbers',
    todo: 'Check that the export holds the trace itself.',
  });
}
