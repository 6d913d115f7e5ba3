import { message } from '../../../messages/index.js';
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
    what: message('feed-trouble'),
    evidenceFor: lines(
      wanders && message('short-rate-wanders', { cv: drift! }),
      uneven && message('shorts-uneven', { cv: cv! }),
      alternates && message('mode-changes', { changes: c.timeline.changes }),
      short?.expected,
    ),
    evidenceAgainst: lines(
      drift !== null && !wanders && message('short-rate-steady', { cv: drift }),
      short !== null && !wanders && !alternates && message('nothing-wanders'),
    ),
    check: message('check-feed'),
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
