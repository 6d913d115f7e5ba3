import { ArcError, MODES } from '../../../core/index.js';
import { message, note } from '../../../messages/index.js';
import type { Channel, ReadOptions } from '../../../recording/index.js';
import { EvenGrid } from './even-grid.js';
import { type Layout, parseHeader, plainLayout } from './row-layout.js';
import type { LiveItem, Losses } from './types.js';

/** Rows from whose spacing the rate is taken where none is stated. */
const RATE_ROWS = 200;
/** A line longer than this is no row. */
const LONGEST_LINE = 4096;

/**
 * Text rows `time,voltage,current` to samples on an even time base. A first line with names may order the
 * columns otherwise; `#expect <mode>` and `#program <name>` between rows are told on. Short holes are bridged
 * and counted, longer ones break the time base.
 */
export class RowReader {
  readonly #losses: Losses;
  readonly #reading: ReadOptions;
  #rest = '';
  #layout: Layout | undefined;
  #grid: EvenGrid | undefined;
  #early: number[][] = [];
  #out: number[][] = [];
  #items: LiveItem[] = [];

  constructor(losses: Losses, reading: ReadOptions) {
    this.#losses = losses;
    this.#reading = reading;
  }

  /** Takes text as it comes; a line may be split anywhere. */
  push(text: string): LiveItem[] {
    this.#items = [];
    const lines = (this.#rest + text).split(/\r\n|\n|\r/);
    this.#rest = lines.pop() ?? '';
    if (this.#rest.length > LONGEST_LINE) {
      this.#rest = '';
      this.#losses.badRows++;
    }
    for (const line of lines) this.#line(line.trim());
    this.#release();
    return this.#items;
  }

  /** The stream ends, or its connection: an unfinished line is dropped, rows too few for a rate are used. */
  end(): LiveItem[] {
    this.#items = [];
    if (this.#rest !== '') this.#losses.badRows++;
    this.#rest = '';
    if (!this.#grid && this.#early.length > 2) this.#settle();
    this.#release();
    return this.#items;
  }

  #line(line: string): void {
    if (line === '') return;
    if (line.startsWith('#')) this.#told(line.slice(1).trim());
    else this.#cells(line);
  }

  #cells(line: string): void {
    const cells = line.split(/[,;\t]/).map((cell) => cell.trim());
    if (!this.#layout) {
      const named = /[a-z]/i.test(line.replaceAll(/\de[+-]?\d/gi, ''));
      this.#layout = named
        ? parseHeader(cells, this.#reading)
        : plainLayout(cells.length, this.#reading);
      if (named) return;
    }
    const row = this.#layout.columns.map(({ at, factor }) => factor * number(cells[at]));
    if (row.some((value) => !Number.isFinite(value))) {
      this.#losses.badRows++;
      return;
    }
    if (this.#grid) {
      this.#place(this.#grid, row);
      return;
    }
    this.#early.push(row);
    if (this.#early.length >= (this.#reading.sampleRateHz ? 1 : RATE_ROWS)) this.#settle();
  }

  /** Enough rows for a rate: says the format and places what has waited. */
  #settle(): void {
    const times = this.#early.map((row) => row[0]!);
    const rateHz = this.#reading.sampleRateHz ?? rateOf(times);
    const channels: Channel[] = this.#layout!.columns.slice(1).map(({ name, quantity }) => ({
      name,
      quantity,
      unit: quantity === 'voltage' ? 'V' : 'A',
    }));
    const by = this.#reading.sampleRateHz ? 'stated' : 'times';
    const notes = [note('live-rows', { rateHz, by })];
    const format = {
      kind: 'electrical' as const,
      format: 'rows',
      sampleRateHz: rateHz,
      channels,
      notes,
    };
    this.#items.push({ type: 'format', format });
    this.#grid = new EvenGrid(rateHz, this.#losses);
    for (const row of this.#early) this.#place(this.#grid, row);
    this.#early = [];
  }

  #place(grid: EvenGrid, [timeS, ...values]: number[]): void {
    const placed = grid.place(timeS!, values);
    if (placed === 'late') return;
    if (!Array.isArray(placed)) {
      this.#release();
      this.#items.push({ type: 'gap', lostS: placed.lostS, why: placed.why });
      this.#out.push(values);
      return;
    }
    this.#out.push(...placed);
  }

  #release(): void {
    const rows = this.#out;
    if (rows.length === 0) return;
    const channels = rows[0]!.map((_, c) => Float64Array.from(rows, (row) => row[c]!));
    this.#items.push({ type: 'samples', channels });
    this.#out = [];
  }

  #told(words: string): void {
    const [verb, ...rest] = words.split(/\s+/);
    const value = rest.join(' ');
    if (verb !== 'expect' && verb !== 'program') return;
    this.#release();
    if (verb === 'program') this.#items.push({ type: 'program', name: value });
    else if (value === 'none') this.#items.push({ type: 'expect', mode: null });
    else {
      const mode = MODES.find((one) => one === value);
      if (mode) this.#items.push({ type: 'expect', mode });
      else
        this.#items.push({
          type: 'note',
          text: message('watch-expect-unknown', { stated: value }),
        });
    }
  }
}

/** NaN for an empty cell, which Number would make 0. */
function number(cell: string | undefined): number {
  return cell === undefined || cell === '' ? Number.NaN : Number(cell);
}

function rateOf(times: readonly number[]): number {
  const steps = times.slice(1).map((time, i) => time - times[i]!);
  const median = steps.sort((a, b) => a - b)[steps.length >> 1] ?? 0;
  if (!(median > 0)) {
    throw new ArcError({
      code: 'time-too-coarse',
      what: 'Most rows carry the same time as the row before, or run backwards.',
      expected:
        'a time in seconds that grows from row to row, finer than the time between two rows',
      todo: 'Have the logger write its time with more digits.',
    });
  }
  // Times are written with few digits: the mean over many steps near the median is finer than one step.
  const near = steps.filter((step) => Math.abs(step - median) < 0.5 * median);
  const rate = near.length / near.reduce((sum, step) => sum + step, 0);
  return Number(rate.toPrecision(5));
}
