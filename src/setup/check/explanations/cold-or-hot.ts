import { message } from '../../../messages/index.js';
import { middle } from '../../index.js';
import type { Context } from '../context.js';
import { type Diagnosis, type ExplanationRule, type Finding, lines } from './finding.js';

/** Likelihood on the map from which a fault is said to be what is there; own choice. */
const CLEAR = 0.3;

const voltsGiven = ({ point }: Context): boolean => point.voltageMeasured;

/** A little too cold for spray: the drops touch the pool, the hiss crackles. */
export const coldSpray: ExplanationRule = {
  id: 'cold-spray',
  judge: ({ c, wanted, intended, seen }) => {
    if (wanted !== 'spray' || intended?.answer !== 'disagrees') return null;
    if (c.bounds.spray === 'no') return null;
    const shorting = c.expected.seen === 'spray-with-shorts';
    if (!shorting && seen !== 'short-circuit') return null;
    const share = c.expected.outcomes?.['spray-with-shorts'] ?? null;
    const cold = share !== null && share >= CLEAR;
    if (!cold && !shorting) return null;
    return {
      weight: cold ? (shorting ? 0.88 : 0.81) : share === null ? 0.6 : 0.7,
      what: message('cold-spray', { shorts: shorting }),
      evidenceFor: [...shares(c), ...floor(c)],
      evidenceAgainst: lines(!voltsGiven(c) && message('no-measured-backing')),
      check: message('check-volts-for-feed', { voltsGiven: voltsGiven(c) }),
    };
  },
};

function shares({ seen, expected }: Context): Finding['evidenceFor'] {
  if (expected.seen !== 'spray-with-shorts') return [];
  const { spray = 0, 'short-circuit': shorts = 0 } = seen.shareOfArcTime ?? {};
  return [message('spray-and-shorts', { sprayShare: spray, shortShare: shorts })];
}

/** The volts at hand and those from which spray is clean at this current. */
function floor({ point, bounds }: Context): Finding['evidenceFor'] {
  if (point.voltageV === null || point.currentA === null) return [];
  const volts = middle(point.voltageV);
  const { mean } = bounds.map.limitV('spray-floor', middle(point.currentA));
  if (volts >= mean) return [];
  return [message('volts-below-limit', { volts, belowV: mean - volts, limitV: mean })];
}

/** Too many volts for short-circuit at this feed, though not yet a long arc. */
export const hotDip: ExplanationRule = {
  id: 'hot-dip',
  judge: (d) => {
    const { c, wanted, intended } = d;
    if (wanted !== 'short-circuit' || intended?.answer !== 'disagrees') return null;
    if (!c.modes.includes('globular') || c.timeline.lasting !== null) return null;
    const outcomes = c.expected.outcomes;
    if (outcomes === null || outcomes.globular < CLEAR || outcomes['long-arc'] > 0.5) return null;
    return hot(d);
  },
};

function hot({ c }: Diagnosis): Finding {
  const { point, bounds } = c;
  const volts = middle(point.voltageV!);
  const limitV = bounds.map.limitV('dip-top', middle(point.currentA!)).mean;
  return {
    weight: volts > limitV ? 0.84 : 0.6,
    what: message('hot-dip'),
    evidenceFor: lines(
      volts > limitV && message('volts-above-limit', { volts, aboveV: volts - limitV, limitV }),
    ),
    evidenceAgainst: lines(
      !voltsGiven(c) && message('no-measured-backing'),
      !point.currentMeasured && message('current-estimated'),
    ),
    check: message('check-volts-for-feed', { voltsGiven: voltsGiven(c) }),
  };
}
