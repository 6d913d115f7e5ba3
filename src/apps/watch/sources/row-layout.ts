import { ArcError } from '../../../core/index.js';
import type { ReadOptions } from '../../../recording/index.js';

/** Where in a row the time and the channels stand; time first. */
export interface Layout {
  columns: { at: number; factor: number; name: string; quantity: 'voltage' | 'current' }[];
}

const TIME_UNITS: Record<string, number> = { s: 1, ms: 1e-3, us: 1e-6, µs: 1e-6 };

/** Rows without names: time, voltage, current; two columns are time and voltage. */
export function plainLayout(cells: number, reading: ReadOptions): Layout {
  if (cells < 2) throw badRows(`a row has ${cells} column`);
  return layout(0, 1, { voltage: 1, ...(cells > 2 ? { current: 2 } : {}) }, reading);
}

/**
 * A line of names such as `time_ms,voltage_v,current_a`, in any order.
 *
 * @throws ArcError `bad-rows` without a time, or without a voltage and a current.
 */
export function parseHeader(cells: readonly string[], reading: ReadOptions): Layout {
  const find = (pattern: RegExp): number => cells.findIndex((cell) => pattern.test(cell));
  const map = reading.channelMap ?? {};
  const at = (key: 'time' | 'voltage' | 'current', pattern: RegExp): number => {
    const stated = map[key];
    if (typeof stated === 'number') return stated - 1;
    return stated === undefined ? find(pattern) : cells.indexOf(stated);
  };
  const [time, voltage, current] = [
    at('time', /^t(ime)?\b|^time/i),
    at('voltage', /^(v|u)\b|volt/i),
    at('current', /^(i|a)\b|curr|amp/i),
  ];
  if (time < 0) throw badRows(`no column of "${cells.join(',')}" is a time`);
  if (voltage < 0 && current < 0)
    throw badRows(`no column of "${cells.join(',')}" is a voltage or a current`);
  const unit = /(?:_|\(|\[|\s)(s|ms|us|µs)[)\]]?$/i.exec(cells[time]!)?.[1]?.toLowerCase() ?? 's';
  const found = { ...(voltage < 0 ? {} : { voltage }), ...(current < 0 ? {} : { current }) };
  return layout(time, TIME_UNITS[unit]!, found, reading);
}

function layout(
  time: number,
  timeFactor: number,
  found: { voltage?: number; current?: number },
  { scale }: ReadOptions,
): Layout {
  const columns: Layout['columns'] = [
    { at: time, factor: timeFactor, name: 'time', quantity: 'voltage' },
  ];
  for (const quantity of ['voltage', 'current'] as const) {
    const at = found[quantity];
    if (at !== undefined)
      columns.push({ at, factor: scale?.[quantity] ?? 1, name: quantity, quantity });
  }
  return { columns };
}

function badRows(what: string): ArcError {
  return new ArcError({
    code: 'bad-rows',
    what: `The rows cannot be read: ${what}.`,
    expected: 'rows of time,voltage,current, with or without a first line of names',
    todo: 'Name the columns in a first line, or state them with --map.',
  });
}
