import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { ReadOptions } from '../types.js';
import { columnName, findColumn, listColumns, quote } from './find-column.js';
import { unitOf } from './header-name.js';
import { refuseOwnTable } from './own-table.js';
import type { LogColumn, LogTable } from './table.js';
import type { LogUnit } from './units.js';
import { isNotMeasured, type LogQuantity, recogniseName } from './words.js';

/** A column and what its values are multiplied by to become volts or amperes. */
export interface ChosenColumn {
  index: number;
  column: LogColumn;
  /** Known when the file says so; for time it may be left to the time base. */
  unit?: LogUnit;
}

export interface ColumnChoice {
  time?: ChosenColumn;
  voltage?: ChosenColumn;
  current?: ChosenColumn;
  /** One column without a name is taken as the voltage, though it could be the current. */
  loneByPlace?: boolean;
  notes: Note[];
}

/**
 * Decides which column is which: what the user stated, then names and units, then (only where the
 * file has no names at all) the order time, voltage, current. Every choice that was not stated is
 * noted. `channelMap.time: 'none'` says that no column holds time.
 *
 * @throws ArcError `bad-channel`, `contradicting-channels`, `unknown-columns`.
 */
export function chooseColumns(table: LogTable, options: ReadOptions): ColumnChoice {
  const notes: Note[] = [];
  const choice: ColumnChoice = { notes };
  const map = options.channelMap ?? {};
  refuseSound(map);
  const taken = new Set<number>();
  for (const quantity of ['time', 'voltage', 'current'] as const) {
    const stated = map[quantity];
    if (stated === undefined || (quantity === 'time' && stated === 'none')) continue;
    const index = findColumn(table, stated, quantity);
    if (taken.has(index)) throw sameColumn(table, index);
    taken.add(index);
    choice[quantity] = chosen(table, index);
  }
  const noTime = map.time === 'none';
  if (table.columns.every((column) => column.unnamed && column.unit === undefined)) {
    chooseByOrder(table, choice, taken, noTime);
  } else chooseByName(table, choice, taken, noTime);
  if (choice.voltage === undefined && choice.current === undefined) {
    refuseOwnTable(
      table.fileName,
      table.columns.map(({ name, unit }) => name + (unit === undefined ? '' : `_${unit}`)),
    );
    throw unknownColumns(table);
  }
  return choice;
}

function chosen(table: LogTable, index: number): ChosenColumn {
  const column = table.columns[index] as LogColumn;
  const unit = unitOf(column.name, column.unit);
  return { index, column, ...(unit === undefined ? {} : { unit }) };
}

function chooseByName(
  table: LogTable,
  choice: ColumnChoice,
  taken: Set<number>,
  noTime: boolean,
): void {
  for (const quantity of ['time', 'voltage', 'current'] as const) {
    if (choice[quantity] !== undefined || (quantity === 'time' && noTime)) continue;
    const candidates = rankColumns(table, quantity, taken);
    const best = candidates[0];
    if (best === undefined) continue;
    taken.add(best.index);
    choice[quantity] = chosen(table, best.index);
    const by = { column: columnName(table, best.index), by: best.by };
    choice.notes.push(note(`${quantity}-column`, by));
    const others = candidates.filter(
      ({ rank, index }) => rank === best.rank && index !== best.index,
    );
    if (others.length === 0) continue;
    const columns = others.map(({ index }) => columnName(table, index));
    choice.notes.push(note('other-column', { columns, quantity }));
  }
}

interface Candidate {
  index: number;
  rank: number;
  by: 'name' | 'unit';
}

/** Columns that may hold the quantity, best first. A unit of another quantity rules a column out. */
function rankColumns(table: LogTable, quantity: LogQuantity, taken: Set<number>): Candidate[] {
  const found: Candidate[] = [];
  table.columns.forEach((column, index) => {
    if (taken.has(index) || column.preview.every((value) => Number.isNaN(value))) return;
    const unit = unitOf(column.name, column.unit);
    const name = column.unnamed ? undefined : recogniseName(column.name);
    if (unit !== undefined && unit.quantity !== quantity && column.unit !== undefined) return;
    if (name?.quantity === quantity) {
      found.push({ index, rank: name.rank + (unit?.quantity === quantity ? 2 : 0), by: 'name' });
    } else if (quantity === 'time' && column.clock) {
      found.push({ index, rank: 1, by: 'unit' });
    } else if (name === undefined && unit?.quantity === quantity && !isNotMeasured(column.name)) {
      found.push({ index, rank: 1, by: 'unit' });
    }
  });
  return found.sort((a, b) => b.rank - a.rank || a.index - b.index);
}

function chooseByOrder(
  table: LogTable,
  choice: ColumnChoice,
  taken: Set<number>,
  noTime: boolean,
): void {
  const free = table.columns.map((_, index) => index).filter((index) => !taken.has(index));
  const order: LogQuantity[] = ['voltage', 'current'];
  const first = free[0];
  if (first !== undefined && choice.time === undefined && !noTime && looksLikeTime(table, first)) {
    order.unshift('time');
  }
  if (choice.voltage !== undefined || choice.current !== undefined)
    order.splice(order.indexOf('voltage'));
  choice.loneByPlace = free.length - (order[0] === 'time' ? 1 : 0) === 1;
  for (const quantity of order) {
    const index = free.shift();
    if (index === undefined) break;
    choice[quantity] = chosen(table, index);
    const by = { column: columnName(table, index), by: 'place' } as const;
    choice.notes.push(note(`${quantity}-column`, by));
  }
}

/** Clock text, or values that rise almost always. */
function looksLikeTime(table: LogTable, index: number): boolean {
  const column = table.columns[index] as LogColumn;
  if (column.clock) return true;
  const values = column.preview.filter(Number.isFinite);
  if (values.length < 3 || table.columns.length < 2) return false;
  let rising = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] ?? 0) > (values[i - 1] ?? 0)) rising++;
  return rising >= 0.95 * (values.length - 1);
}

function refuseSound(map: NonNullable<ReadOptions['channelMap']>): void {
  if (map.sound === undefined) return;
  throw new ArcError({
    code: 'contradicting-channels',
    what: `A sound channel (${map.sound}) was stated for an electrical log.`,
    expected: 'columns for voltage, current or time',
    todo: 'Leave out the sound channel.',
  });
}

function sameColumn(table: LogTable, index: number): ArcError {
  return new ArcError({
    code: 'contradicting-channels',
    what: `${quote(table, index)} was stated for two quantities.`,
    expected: 'a column of its own for each',
    todo: 'State one column for each.',
  });
}

function unknownColumns(table: LogTable): ArcError {
  return new ArcError({
    code: 'unknown-columns',
    what: `${table.fileName} has ${listColumns(table)}; none is recognised as a voltage or a current.`,
    expected:
      'a column named voltage or current (in one of several languages) or with V or A as its unit',
    todo: 'State the columns, for example --map time=1,voltage=2,current=3.',
  });
}
