import { ArcError, type Note } from '../../core/index.js';
import type { ChosenColumn } from './choose-columns.js';
import { judgeTimeBase, type TimeBase } from './time-base.js';

/** Time units in the order in which they are tried, with what they are called. */
const UNITS: readonly [factor: number, name: string][] = [
  [1, 'seconds'],
  [1e-3, 'milliseconds'],
  [1e-6, 'microseconds'],
  [1e-9, 'nanoseconds'],
];
/** A trace slower than this is of no use for an arc: that the column counts seconds is then doubtful. */
const SLOWEST_HZ = 50;
/** Dates counted from 1970 lie beyond this many seconds (some time in 1973) … */
const EPOCH_S = 1e8;
/** … and before this many (the year 2286). */
const EPOCH_END_S = 1e10;
const RATE_AGREES = 0.01;

export interface TimePlan {
  /** Multiplies the column to give seconds. */
  factor: number;
  base: TimeBase;
  notes: Note[];
}

/**
 * Finds the unit of a time column and its rhythm. A written unit is believed; otherwise seconds, unless
 * the values are plainly dates in smaller units. Where seconds would mean fewer than 50 rows a second, it asks. A
 * rate stated by the user decides between the units, and must agree with the column.
 *
 * @param stamps first rows of the column as they stand, in rising order
 * @throws ArcError `no-time-steps`, `time-unit-unclear`, `rate-contradiction`.
 */
export function planTime(
  fileName: string,
  time: ChosenColumn,
  stamps: Float64Array,
  statedRateHz: number | undefined,
): TimePlan {
  const raw = judgeTimeBase(stamps);
  if (raw === undefined) throw noSteps(fileName, time, stamps);
  const written = time.column.clock
    ? 1
    : time.unit?.quantity === 'time'
      ? time.unit.factor
      : undefined;
  const factors = written === undefined ? UNITS.map(([factor]) => factor) : [written];
  const rateAt = (factor: number): number => raw.rateHz / factor;
  let factor: number | undefined;
  if (statedRateHz !== undefined) {
    factor = factors.find((f) => Math.abs(rateAt(f) / statedRateHz - 1) <= RATE_AGREES);
    if (factor === undefined)
      throw contradiction(fileName, time, rateAt(written ?? 1), statedRateHz);
  }
  factor ??= written ?? guessFactor(stamps, rateAt);
  if (factor === undefined) throw unclearUnit(fileName, time, rateAt);
  const scaled = judgeTimeBase(stamps, factor) ?? raw;
  const base = statedRateHz === undefined ? scaled : { ...scaled, rateHz: statedRateHz };
  return {
    factor,
    base,
    notes: timeNotes(time, factor, written !== undefined, base, statedRateHz),
  };
}

/** Undefined where seconds would be too slow for an arc: milliseconds then, or a slow log of seconds? */
function guessFactor(stamps: Float64Array, rateAt: (factor: number) => number): number | undefined {
  const size = Math.abs(stamps[0] ?? 0);
  const epoch = UNITS.find(([f]) => size * f >= EPOCH_S && size * f < EPOCH_END_S);
  if (epoch !== undefined && rateAt(epoch[0]) >= 1) return epoch[0];
  return rateAt(1) >= SLOWEST_HZ ? 1 : undefined;
}

function unclearUnit(
  fileName: string,
  time: ChosenColumn,
  rateAt: (factor: number) => number,
): ArcError {
  const [s, ms, us] = [1, 1e-3, 1e-6].map((factor) => Number(rateAt(factor).toPrecision(5)));
  return new ArcError({
    code: 'time-unit-unclear',
    what: `${fileName}: the time column “${time.column.name}” gives no unit. In seconds it would be a log of ${s} Hz, too slow for an arc; in milliseconds ${ms} Hz, in microseconds ${us} Hz.`,
    expected: 'the unit in the name, such as time_ms, or the rate',
    todo: `Pass --sample-rate ${ms} for milliseconds, or --sample-rate ${us} for microseconds.`,
  });
}

function timeNotes(
  time: ChosenColumn,
  factor: number,
  written: boolean,
  base: TimeBase,
  statedRateHz: number | undefined,
): Note[] {
  const notes: Note[] = [];
  const name = UNITS.find(([f]) => f === factor)?.[1] ?? `units of ${factor} s`;
  if (!written) {
    const why = statedRateHz === undefined ? 'from its size and steps' : 'from the stated rate';
    notes.push({
      code: 'time-unit-assumed',
      message: `“${time.column.name}” gives no unit; it is taken as ${name}, ${why}.`,
    });
  }
  const rate = `${Number(base.rateHz.toPrecision(7))} Hz`;
  if (base.kind === 'steady') {
    notes.push({
      code: 'rate-from-time',
      message: `The rate of ${rate} comes from the time stamps.`,
    });
  } else if (base.kind === 'coarse') {
    notes.push({
      code: 'coarse-time',
      message: `The time stamps are rounded to more than a sampling step; ${rate} is the mean rate, and the rows are taken as evenly spaced.`,
    });
  } else {
    const [short, long] = base.usualStepsS.map((step) => `${(step * 1000).toPrecision(3)} ms`);
    notes.push({
      code: 'uneven-time',
      message: `The rows are unevenly spaced (${short} to ${long}); they were resampled on straight lines to ${rate}, the median step. Detail shorter than the longest steps is lost.`,
    });
  }
  return notes;
}

function noSteps(fileName: string, time: ChosenColumn, stamps: Float64Array): ArcError {
  return new ArcError({
    code: 'no-time-steps',
    what: `${fileName}: the time column “${time.column.name}” does not rise (${stamps.length} rows, first value ${stamps[0]}).`,
    expected: 'at least two rows with different times',
    todo: 'State another time column, or --map time=none with --sample-rate.',
  });
}

function contradiction(
  fileName: string,
  time: ChosenColumn,
  found: number,
  stated: number,
): ArcError {
  return new ArcError({
    code: 'rate-contradiction',
    what: `${fileName}: the time column “${time.column.name}” says ${found.toPrecision(5)} Hz, but ${stated} Hz was stated.`,
    expected: 'a stated rate within 1 % of the time stamps',
    todo: 'Leave out the rate, or state --map time=none to leave out the column.',
  });
}
