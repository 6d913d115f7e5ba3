import { message } from '../../../messages/index.js';
import { middle } from '../../index.js';
import type { Context } from '../context.js';
import { type ExplanationRule, lines } from './finding.js';

/**
 * Conventional load voltage of wire processes, `14 + 0.05·I` (from memory of IEC 60974-1): a
 * yardstick for "much or little voltage for this current", not a boundary.
 */
export const loadVoltage = (currentA: number): number => 14 + 0.05 * currentA;

/** CO2 needs about 1–3 V more than an argon mix at the same current (from memory of shop guides). */
const CO2_EXTRA_V = 2;
/** Volts above the yardstick, durations and rates of shorts: own choice about shorts of a few milliseconds (common practice, no source). */
const LONG_ARC_V = 3;
const VERY_LONG_ARC_V = 6;
const STUBBING_SHORT_S = 0.008;
const SLOW_SHORT_S = 0.005;
const FEW_SHORTS_HZ = 40;

/** Volts above the yardstick; null where volts or amperes are unknown. */
function voltageSurplus({ point, setup }: Context): number | null {
  const { voltageV, currentA } = point;
  if (voltageV === null || currentA === null) return null;
  const extra = (setup.gas?.co2.min ?? 0) >= 50 ? CO2_EXTRA_V : 0;
  return middle(voltageV) - loadVoltage(middle(currentA)) - extra;
}

/** The wire runs into the pool faster than the voltage melts it. */
export const stubbing: ExplanationRule = {
  id: 'stubbing',
  judge: ({ c }) => {
    if (!c.modes.includes('short-circuit')) return null;
    const duration = c.figure('shortDurationS');
    const rate = c.figure('shortCircuitRateHz');
    if (duration === null) return null;
    const few = rate !== null && rate < FEW_SHORTS_HZ && duration >= SLOW_SHORT_S;
    if (duration < STUBBING_SHORT_S && !few) return null;
    return {
      weight: 0.87,
      what: message('stubbing'),
      evidenceFor: lines(
        message('shorts-last', { meanS: duration }),
        rate !== null && message('shorts-a-second', { rateHz: rate }),
      ),
      evidenceAgainst: lines((voltageSurplus(c) ?? -9) > -3 && message('voltage-not-low')),
      check: message('check-stubbing'),
    };
  },
};

/** More voltage than the feed needs: the arc is long, drops hang and fall. */
export const longArc: ExplanationRule = {
  id: 'long-arc',
  judge: ({ c, seen, wanted, trouble }) => {
    const surplus = voltageSurplus(c);
    if (surplus === null || seen === null || !trouble) return null;
    const dipLost = wanted === 'short-circuit' && seen !== 'short-circuit';
    const long = surplus > LONG_ARC_V && dipLost;
    const hanging = surplus > VERY_LONG_ARC_V && seen === 'globular';
    if (!long && !hanging) return null;
    return {
      weight: long ? 0.85 : 0.62,
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
