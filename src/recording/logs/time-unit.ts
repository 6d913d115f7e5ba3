import { ArcError, type Note } from '../../core/index.js';
import { note } from '../../messages/index.js';
import type { ChosenColumn } from './choose-columns.js';
import { judgeTimeBase, type TimeBase } from './time-base.js';

/** Time units in seconds, in the order in which they are tried. */
const UNITS_S: readonly number[] = [1, 1e-3, 1e-6, 1e-9];
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
  const factors = written === undefined ? UNITS_S : [written];
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
  const epoch = UNITS_S.find((f) => size * f >= EPOCH_S && size * f < EPOCH_END_S);
  if (epoch !== undefined && rateAt(epoch) >= 1) return epoch;
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
  if (!written) {
    const by = statedRateHz === undefined ? 'size' : 'stated-rate';
    notes.push(note('time-unit-assumed', { column: time.column.name, unitS: factor, by }));
  }
  const { rateHz } = base;
  if (base.kind === 'steady') {
    notes.push(note('rate-from-time', { rateHz }));
  } else if (base.kind === 'coarse') {
    notes.push(note('coarse-time', { rateHz }));
  } else {
    const [shortStepS, longStepS] = base.usualStepsS;
    notes.push(note('uneven-time', { shortStepS, longStepS, rateHz }));
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
