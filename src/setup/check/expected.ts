import type { Mode } from '../../core/index.js';
import type { KnownPoint, Setup } from '../index.js';
import { type Advice, advise } from '../process-map/advice.js';
import type { ProcessMap } from '../process-map/boundary-lines.js';
import { likelihoods, type MapPoint } from '../process-map/likelihood.js';
import { fedWire } from '../process-map/map-point.js';
import { type Likelihoods, OUTCOME_OF_MODE, type Outcome } from '../process-map/outcomes.js';
import { fromRange } from '../process-map/spread.js';
import type { Seen } from './input.js';

/** What the map says of a case: outcomes at the working point, and the way to the wanted mode. */
export interface Expected {
  /** Null where volts or amperes are not known, or the polarity is not electrode positive. */
  outcomes: Likelihoods | null;
  /** What was seen, as an outcome; null for pulses and for mixtures that have no place on the map. */
  seen: Outcome | null;
  advice: Advice | null;
}

/** Shares of a mixed run from which spray with shorts is told; own choice. */
const LEAST_SHARE = 0.08;

/** Reads the case from the map. */
export function expectedOf(setup: Setup, seen: Seen, point: KnownPoint, map: ProcessMap): Expected {
  const outcome = outcomeSeen(seen);
  const place = mapPointOf(setup, point);
  if (place === null) return { outcomes: null, seen: outcome, advice: null };
  const wire = fedWire(setup);
  const wanted = setup.expectedMode;
  const advice =
    wanted === null || wire.diameterMm === null
      ? null
      : advise(map, {
          wanted,
          point: place,
          wire: { ...wire, diameterMm: wire.diameterMm },
          source: setup.source,
          polarity: setup.polarity,
          seen: seen.status === 'ok' ? outcome : null,
        });
  return { outcomes: likelihoods(map, place), seen: outcome, advice };
}

function mapPointOf({ polarity }: Setup, { voltageV, currentA }: KnownPoint): MapPoint | null {
  if (voltageV === null || currentA === null || polarity === 'dcen' || polarity === 'ac') {
    return null;
  }
  return { voltageV: fromRange(voltageV), currentA: fromRange(currentA), correlation: 0 };
}

function outcomeSeen({ mode, shareOfArcTime, sourceProgramme }: Seen): Outcome | null {
  if (mode === null || mode === 'pulsed-spray' || sourceProgramme === 'pulsed') return null;
  if (mode !== 'mixed') return OUTCOME_OF_MODE[mode];
  const share = (one: Mode): number => shareOfArcTime?.[one] ?? 0;
  const shorting = share('spray') >= LEAST_SHARE && share('short-circuit') >= LEAST_SHARE;
  return shorting && share('globular') < LEAST_SHARE * 2 ? 'spray-with-shorts' : null;
}
