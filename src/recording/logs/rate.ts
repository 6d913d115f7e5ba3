import { ArcError } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { LogTable } from './table.js';

const SLOWEST_HZ = 1;
const FASTEST_HZ = 1e8;

/** @throws ArcError `bad-sample-rate` outside 1 Hz to 100 MHz. */
export function checkRate(rateHz: number, where: string): void {
  if (rateHz >= SLOWEST_HZ && rateHz <= FASTEST_HZ) return;
  throw new ArcError({
    code: 'bad-sample-rate',
    what: `${where}: the sample rate is ${Number(rateHz.toPrecision(6))} Hz.`,
    expected: `${SLOWEST_HZ} Hz to ${FASTEST_HZ / 1e6} MHz`,
    todo: 'Pass --sample-rate if you know it, or write the unit of time into the header.',
  });
}

/**
 * The rate of a table without a time column: the stated one, which must agree with the file's own, or
 * the file's own. What was used is noted.
 *
 * @throws ArcError `no-time`, `rate-contradiction`.
 */
export function untimedRate(table: LogTable, statedHz: number | undefined): number {
  const own = table.statedRate;
  if (statedHz !== undefined) {
    if (own !== undefined && Math.abs(own.rateHz / statedHz - 1) > 0.01) {
      throw contradiction(table.fileName, own, statedHz);
    }
    table.notes.push(note('rate-stated', { rateHz: statedHz }));
    return statedHz;
  }
  if (own === undefined) throw noTime(table.fileName);
  table.notes.push(note('rate-from-file', { rateHz: own.rateHz, line: own.from }));
  return own.rateHz;
}

function contradiction(
  fileName: string,
  own: { rateHz: number; from: string },
  statedHz: number,
): ArcError {
  return new ArcError({
    code: 'rate-contradiction',
    what: `${fileName} says ${own.rateHz} Hz (“${own.from}”), but ${statedHz} Hz was stated.`,
    expected: 'a stated rate within 1 % of that in the file',
    todo: 'Leave out the rate, or correct the file.',
  });
}

function noTime(fileName: string): ArcError {
  return new ArcError({
    code: 'no-time',
    what: `${fileName} has no time column and states no sample rate.`,
    expected: 'a column of time, or the rate in hertz',
    todo: 'Pass --sample-rate, or state the time column with --map time=….',
  });
}
