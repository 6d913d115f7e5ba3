import { LONGEST_CELL } from './cells.js';

const DATE = /^(?:(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})|\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4})$/;
const CLOCK =
  /^(?:(\d+):)?(\d{1,3}):(\d{1,2})(?:[.,:](\d+))?\s*([ap]\.?m\.?)?\s*(?:z|utc|[+-]\d{2}:?\d{2})?$/i;

/** True for a cell that holds a date and nothing else. */
export function isDate(text: string): boolean {
  return text.length <= LONGEST_CELL && DATE.test(text.trim());
}

/**
 * Seconds of `12:34:56.789`, `34:56.7`, `2024-05-01T12:34:56.789Z`, `1.5.2024 12:34:56,789`,
 * `01:02:03 PM`. With a year first the date counts; with any other date only the time of day does,
 * because day and month cannot be told apart (a passed midnight is then seen as a step back).
 * Undefined for anything else.
 */
export function readClock(text: string): number | undefined {
  const trimmed = text.trim();
  if (trimmed.length > LONGEST_CELL) return undefined;
  const split = /^(\S+?)[T ]\s*(.+)$/.exec(trimmed);
  const dated = split?.[1] !== undefined && isDate(split[1]);
  const clock = CLOCK.exec(dated ? (split?.[2] ?? '') : trimmed);
  if (clock === null) return undefined;
  const [, hours = '0', minutes = '', seconds = '', fraction = '', half = ''] = clock;
  const hour = hourOfDay(Number(hours), half);
  const rest = Number(minutes) * 60 + Number(`${seconds}.${fraction || '0'}`);
  return (dated ? dayStart(split?.[1] ?? '') : 0) + hour * 3600 + rest;
}

function hourOfDay(hours: number, half: string): number {
  if (/^p/i.test(half)) return hours === 12 ? 12 : hours + 12;
  return /^a/i.test(half) && hours === 12 ? 0 : hours;
}

function dayStart(date: string): number {
  const found = DATE.exec(date);
  if (found?.[1] === undefined) return 0;
  return Date.UTC(Number(found[1]), Number(found[2]) - 1, Number(found[3])) / 1000;
}
