import { message } from '../../../messages/index.js';
import { middle, USUAL_STICK_OUT } from '../../index.js';
import { loadLineV } from '../../process-map/windows.js';
import type { Context } from '../context.js';
import { type ExplanationRule, lines } from './finding.js';
import { currentShortfall } from './low-current.js';

/** Likelihood on the map from which a fault is said to be there; own choice. */
const LIKELY = 0.5;
/** Durations and rates of shorts: own choice about shorts of a few milliseconds (common practice, no source). */
const STUBBING_SHORT_S = 0.008;
const SLOW_SHORT_S = 0.005;
const FEW_SHORTS_HZ = 40;

/** Volts above the load line of this wire and gas; null where volts or amperes are unknown. */
function voltageSurplus({ point, bounds }: Context): number | null {
  const { voltageV, currentA } = point;
  if (voltageV === null || currentA === null) return null;
  return middle(voltageV) - loadLineV(bounds.map, middle(currentA));
}

/** The wire runs into the pool faster than the voltage melts it. */
export const stubbing: ExplanationRule = {
  id: 'stubbing',
  judge: ({ c, trouble }) => {
    if (!c.modes.includes('short-circuit')) return null;
    const duration = c.figure('shortDurationS');
    const rate = c.figure('shortCircuitRateHz');
    const few = rate !== null && rate < FEW_SHORTS_HZ && (duration ?? 0) >= SLOW_SHORT_S;
    const slow = duration !== null && (duration >= STUBBING_SHORT_S || few);
    const cold = trouble && (c.expected.outcomes?.stubbing ?? 0) >= LIKELY;
    if (!slow && !cold) return null;
    const surplus = voltageSurplus(c);
    return {
      weight: slow ? 0.87 : 0.74,
      what: message('stubbing'),
      evidenceFor: lines(
        duration !== null && message('shorts-last', { meanS: duration }),
        rate !== null && message('shorts-a-second', { rateHz: rate }),
        cold && surplus !== null && message('voltage-lacking', { lackingV: -surplus }),
      ),
      evidenceAgainst: lines((surplus ?? -9) > -3 && message('voltage-not-low')),
      check: message('check-stubbing'),
    };
  },
};

/** More voltage than the feed needs: the arc is long, drops hang and fall. */
export const longArc: ExplanationRule = {
  id: 'long-arc',
  judge: ({ c, seen, wanted, trouble }) => {
    const surplus = voltageSurplus(c);
    const outcomes = c.expected.outcomes;
    if (surplus === null || outcomes === null || seen === null || !trouble) return null;
    const long = outcomes['long-arc'] + outcomes['burn-back'];
    const dipLost = wanted === 'short-circuit' && seen !== 'short-circuit';
    if (long < LIKELY || seen === 'short-circuit') return null;
    // Where the wire draws less than it should, the long arc follows from that.
    const follows = currentShortfall(c) !== null || (c.setup.stickOutMm ?? 0) > USUAL_STICK_OUT.max;
    return {
      weight: follows ? 0.5 : 0.85,
      what: message('long-arc'),
      evidenceFor: lines(
        message('voltage-surplus', { surplusV: surplus }),
        dipLost && message('shorts-missing'),
      ),
      evidenceAgainst: lines(!c.point.currentMeasured && message('current-estimated')),
      check: message('check-long-arc'),
    };
  },
};
