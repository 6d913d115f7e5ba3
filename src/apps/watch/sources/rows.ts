import { MODES } from '../../../core/index.js';
import { message, note } from '../../../messages/index.js';
import { type LineReader, type ReadOptions, readLinesAs } from '../../../recording/index.js';
import { EvenGrid } from './even-grid.js';
import type { LiveItem, Losses } from './types.js';

/** Lines by which columns, units and rate are decided; with a stated rate fewer do. */
const FIRST_LINES = 200;
const FIRST_LINES_STATED = 20;
/** Lines kept while none of them makes a table. */
const MOST_LINES = 1000;
/** A line longer than this is no row. */
const LONGEST_LINE = 4096;
/** A step of the first row that differs from the usual one by more than this share is that of a cut line. */
const LIKE = 0.5;
/** What begins a line on a serial or network line and is no text: negotiation, line noise. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const NOISE = /^[\u0000-\u001f\u007f\ufffd]+|\u0000/g;

/**
 * Text rows to samples on an even time base. Columns, units, numbers and clock are read by the rules for files;
 * `#expect <mode>` and `#program <name>` between rows are told on. Short holes are bridged and counted, longer ones
 * break the time base.
 */
export class RowReader {
  readonly #losses: Losses;
  readonly #reading: ReadOptions;
  #rest = '';
  #lines: string[] = [];
  #tryAt: number;
  #reader: LineReader | undefined;
  #grid: EvenGrid | undefined;
  #out: number[][] = [];
  #items: LiveItem[] = [];

  constructor(losses: Losses, reading: ReadOptions) {
    this.#losses = losses;
    this.#reading = reading;
    this.#tryAt = reading.sampleRateHz ? FIRST_LINES_STATED : FIRST_LINES;
  }

  /** Takes text as it comes; a line may be split anywhere. @throws ArcError what `readLinesAs` asks or refuses */
  push(text: string): LiveItem[] {
    this.#items = [];
    const lines = (this.#rest + text).split(/\r\n|\n|\r/);
    this.#rest = lines.pop() ?? '';
    if (this.#rest.length > LONGEST_LINE) {
      this.#rest = '';
      this.#losses.badRows++;
    }
    for (const line of lines) this.#line(line.replace(NOISE, '').trim());
    this.#release();
    return this.#items;
  }

  /** The stream ends, or its connection: an unfinished line is dropped, rows too few for a rate are used. */
  end(): LiveItem[] {
    this.#items = [];
    if (this.#rest !== '') this.#losses.badRows++;
    this.#rest = '';
    if (!this.#reader && this.#lines.length > 2) this.#settle();
    this.#release();
    return this.#items;
  }

  #line(line: string): void {
    if (line === '') return;
    if (/^#\s*(expect|program)\b/.test(line)) this.#told(line.slice(1).trim());
    else if (this.#reader) this.#row(this.#reader, line);
    else {
      this.#lines.push(line);
      if (this.#lines.length >= this.#tryAt) this.#settle();
    }
  }

  #row(reader: LineReader, line: string): void {
    const row = reader.row(line);
    if (row !== undefined) this.#place(this.#grid!, row);
    else if (!line.startsWith('#') && !reader.isHeader(line)) this.#losses.badRows++;
  }

  /** Enough lines to know how they are written: says the format and places what has waited. */
  #settle(): void {
    const reader = readLinesAs('The stream', this.#lines, this.#reading);
    if (reader === undefined) {
      // A banner, or the wrong speed of a line: perhaps what comes now can be read.
      this.#losses.badRows += Math.max(0, this.#lines.length - MOST_LINES);
      this.#lines = this.#lines.slice(-MOST_LINES);
      this.#tryAt = this.#lines.length + FIRST_LINES;
      return;
    }
    const { rateHz, channels, notes } = reader;
    const by = this.#reading.sampleRateHz ? 'stated' : 'times';
    const format = {
      kind: 'electrical' as const,
      format: 'rows',
      sampleRateHz: rateHz,
      channels,
      notes: [note('live-rows', { rateHz, by }), ...notes],
    };
    this.#items.push({ type: 'format', format });
    this.#grid = new EvenGrid(rateHz, this.#losses);
    this.#reader = reader;
    for (const row of this.#early(reader)) this.#place(this.#grid, row);
    this.#lines = [];
  }

  /** The rows that have waited, without a first one that was cut in two. */
  #early(reader: LineReader): number[][] {
    const rows: number[][] = [];
    for (const line of this.#lines.slice(reader.firstRow)) {
      const row = reader.row(line);
      if (row) rows.push(row);
      else if (!line.startsWith('#')) this.#losses.badRows++;
    }
    const [first, second] = rows;
    if (!first || !second || rows.length < 4) return rows;
    const stepS = second[0]! - first[0]!;
    const usualS = 1 / reader.rateHz;
    if (Math.abs(stepS - usualS) <= LIKE * usualS) return rows;
    this.#losses.badRows++;
    return rows.slice(1);
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
