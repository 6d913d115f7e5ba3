import type { Diagnosis, ExplanationRule, Finding } from './finding.js';
import { lines } from './finding.js';
import { currentShortfall } from './low-current.js';

/** Regular dip transfer stays well below this coefficient of variation of the interval; own choice, as the two below. */
const WANDERING_CV = 0.8;
/** Coefficient of variation of the rate from second to second. */
const WANDERING_RATE = 0.3;
const MANY_CHANGES = 4;

/** The wire does not arrive evenly: slipping rolls, kinked liner, worn tip, dragging spool. */
export const feedTrouble: ExplanationRule = { id: 'feed-trouble', judge };

function judge({ c, trouble }: Diagnosis): Finding | null {
  const cv = c.figure('shortIntervalCv');
  const drift = c.figure('shortRateDriftCv');
  const short = currentShortfall(c);
  // Globular shorts come at random, and a change of mode changes the rate: neither is a wandering feed.
  const dips = c.modes[0] === 'short-circuit' && c.timeline.lasting === null;
  const wanders = dips && (drift ?? 0) > WANDERING_RATE;
  const uneven = (cv ?? 0) > WANDERING_CV && c.modes.includes('short-circuit');
  const alternates = c.timeline.changes >= MANY_CHANGES && !inTransition(c.permittedAtPoint);
  if (!wanders && !alternates && short === null && !(uneven && trouble)) return null;
  return {
    weight: weigh({
      wanders,
      alternates,
      uneven,
      low: short !== null,
      deep: short?.belowNegative === true,
    }),
    text: 'The wire may not arrive evenly, or slower than stated.',
    evidenceFor: lines(
      wanders &&
        `The rate of shorts wanders from second to second (coefficient of variation ${drift!.toFixed(2)}).`,
      uneven && `The shorts come unevenly (coefficient of variation ${cv!.toFixed(2)}).`,
      alternates && `The mode changed ${c.timeline.changes} times.`,
      short?.expectedText,
    ),
    evidenceAgainst: lines(
      drift !== null &&
        !wanders &&
        `The rate of shorts is steady from second to second (${drift.toFixed(2)}).`,
      short !== null && !wanders && !alternates && 'Nothing wanders: the feed at least is even.',
    ),
    check:
      'Run wire for ten seconds with the arc off, measure or weigh it, and compare with the stated feed; look at drive rolls, liner, contact tip and spool brake.',
  };
}

function inTransition(permitted: Diagnosis['c']['permitted']): boolean {
  return permitted.globular === 'possible' && permitted.spray === 'possible';
}

function weigh(signs: {
  wanders: boolean;
  alternates: boolean;
  uneven: boolean;
  low: boolean;
  deep: boolean;
}): number {
  if (signs.deep) return 0.84;
  if (signs.wanders || signs.alternates) return signs.low ? 0.88 : 0.78;
  return signs.low ? 0.45 : 0.4;
}
