import { ArcError, type Note } from '../../../core/index.js';
import type { Channel, ReadOptions } from '../../types.js';
import { type ChosenColumn, chooseColumns } from '../choose-columns.js';
import { refuseUnlikeVolts } from '../lone-column.js';
import { untimedRate } from '../rate.js';
import { samplingNotes } from '../sampling-notes.js';
import { factorOf, refuseIdleScale } from '../scale.js';
import { emptyFigures, MOST, observe } from '../suspicion.js';
import type { LogTable } from '../table.js';
import { planTime } from '../time-unit.js';
import { readCell, splitCells } from './cells.js';
import { readClock } from './clock.js';
import { detectShape, isTableRow, type TableShape } from './dialect.js';
import { readHeader } from './header.js';
import { readStatedRate } from './metadata.js';
import { describeColumns, dialectNotes } from './table.js';

/** Values from here on stand for "no value", see {@link assembleRecording}. */
const NO_VALUE = 9.8e37;
const HALF_DAY_S = 43_200;

/** How lines that keep coming are read, by the rules for files. */
export interface LineReader {
  rateHz: number;
  channels: Channel[];
  notes: Note[];
  /** Of the lines given, the first that holds numbers. */
  firstRow: number;
  /** Seconds, then a value for each channel; undefined for a line that is no row. To be asked in order. */
  row(line: string): number[] | undefined;
  /** Whether a line is one of the names, said again. */
  isHeader(line: string): boolean;
}

/**
 * Decides by the first lines of a stream how it is written, which column is which, and in what unit; undefined where
 * they hold no table of numbers (yet). What comes before the table, and a first line that was cut in two, does not
 * count.
 *
 * @throws ArcError as for a file: `unknown-columns`, `time-unit-unclear`, `no-time` …; `time-too-coarse`
 */
export function readLinesAs(
  name: string,
  lines: readonly string[],
  options: ReadOptions,
): LineReader | undefined {
  const shape = detectShape(lines);
  if (shape === undefined) return undefined;
  const header = readHeader(lines, shape);
  const rows = lines.slice(shape.firstRow).filter((line) => isTableRow(line, shape));
  const statedRate = readStatedRate(lines.slice(0, shape.firstRow));
  const notes = dialectNotes({ label: 'utf-8', markBytes: 0 }, shape);
  const table: LogTable = {
    format: 'rows',
    fileName: name,
    columns: describeColumns(rows, shape, header),
    ...(statedRate === undefined ? {} : { statedRate }),
    notes,
    read: async function* () {},
  };
  const choice = chooseColumns(table, options);
  notes.push(...choice.notes);
  const channels: Channel[] = [];
  const picks: { pick: ChosenColumn; factor: number }[] = [];
  for (const quantity of ['voltage', 'current'] as const) {
    const pick = choice[quantity];
    if (pick === undefined) continue;
    const unit = quantity === 'voltage' ? 'V' : 'A';
    channels.push({ name: pick.column.name, quantity, unit });
    picks.push({ pick, factor: factorOf(pick, quantity, options, notes) });
  }
  refuseIdleScale(
    options,
    channels.map(({ quantity }) => quantity),
  );
  if (choice.loneByPlace && choice.voltage) {
    const figures = emptyFigures();
    observe(figures, choice.voltage.column.preview, MOST.voltage);
    refuseUnlikeVolts(name, choice.voltage, figures);
  }
  const time = choice.time && timeOf(name, choice.time, options.sampleRateHz);
  if (time) notes.push(...time.notes);
  const rateHz = time?.rateHz ?? untimedRate(table, options.sampleRateHz);
  notes.push(...samplingNotes(rateHz));
  const columns = [
    ...(choice.time && time
      ? [
          {
            index: choice.time.index,
            clock: choice.time.column.clock === true,
            factor: time.factor,
          },
        ]
      : []),
    ...picks.map(({ pick, factor }) => ({ index: pick.index, clock: false, factor })),
  ];
  const read = rowReader(shape, columns, time === undefined ? rateHz : undefined);
  const isHeader = (line: string): boolean => header.lines.some((one) => one.trim() === line);
  return { rateHz, channels, notes, firstRow: shape.firstRow, row: read, isHeader };
}

function timeOf(name: string, time: ChosenColumn, statedRateHz: number | undefined) {
  const all = time.column.preview.filter(Number.isFinite);
  // The first may be the tail of a line that was cut in two.
  const stamps = all.slice(all.length > 3 ? 1 : 0).sort();
  const { factor, base, notes } = planTime(name, time, stamps, statedRateHz);
  if (base.kind === 'coarse' && statedRateHz === undefined) throw tooCoarse();
  const rateHz = base.kind === 'uneven' ? Number(base.rateHz.toPrecision(5)) : base.rateHz;
  return { factor, rateHz, notes };
}

function rowReader(
  { dialect, columns: count }: TableShape,
  columns: readonly { index: number; clock: boolean; factor: number }[],
  untimedHz: number | undefined,
): (line: string) => number[] | undefined {
  const { delimiter, decimal } = dialect;
  let lastS = Number.NaN;
  let dayS = 0;
  let rows = 0;
  return (line) => {
    const cells = splitCells(line, delimiter);
    if (cells.length !== count) return undefined;
    const row: number[] = untimedHz === undefined ? [] : [rows / untimedHz];
    for (const { index, clock, factor } of columns) {
      const cell = cells[index] ?? '';
      let value = (clock ? readClock(cell) : plainNumber(cell, decimal)) ?? Number.NaN;
      if (!(Math.abs(value) < NO_VALUE)) return undefined;
      if (clock) {
        if (value - lastS < -HALF_DAY_S) dayS += 2 * HALF_DAY_S;
        lastS = value;
        value += dayS;
      }
      row.push(value * factor);
    }
    rows++;
    return row;
  };
}

/** A cell as a number: at once where it is plain, with care where it is not. */
function plainNumber(cell: string, decimal: '.' | ','): number | undefined {
  if (decimal === '.' && cell !== '') {
    const value = Number(cell);
    if (Number.isFinite(value)) return value;
  }
  const read = readCell(cell, decimal);
  return read.kind === 'number' ? read.value : undefined;
}

function tooCoarse(): ArcError {
  return new ArcError({
    code: 'time-too-coarse',
    what: 'Most rows carry the same time as the row before.',
    expected: 'a time that grows from row to row, finer than the time between two rows',
    todo: 'Have the logger write its time with more digits, or leave it out and state --sample-rate.',
  });
}
