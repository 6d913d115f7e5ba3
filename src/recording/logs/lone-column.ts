import { ArcError } from '../../core/index.js';
import type { ChosenColumn } from './choose-columns.js';
import type { ChannelFigures } from './suspicion.js';

/** Above this mean a column without a name is more likely amperes, V. An arc burns at some 10 to 45 V (common practice, no source). */
const LIKELY_VOLTS = 60;

/**
 * One lone column without a name could be volts or amperes: its size must not speak against volts.
 * @throws ArcError `unknown-columns`
 */
export function refuseUnlikeVolts(
  fileName: string,
  { index }: ChosenColumn,
  { some, someSum }: ChannelFigures,
): void {
  const size = someSum / some;
  if (!(size > LIKELY_VOLTS)) return;
  throw new ArcError({
    code: 'unknown-columns',
    what: `${fileName} names no columns, and the values of column ${index + 1} lie about ${Number(size.toPrecision(3))}: too high for the volts of an arc.`,
    expected: 'columns with names, or a statement what they hold',
    todo: `If they are amperes, pass --map current=${index + 1}; if volts, --map voltage=${index + 1}.`,
  });
}
