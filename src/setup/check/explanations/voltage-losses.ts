import { message } from '../../../messages/index.js';
import { CABLE_DROP, middle } from '../../index.js';
import { likelihoodsAt } from '../../process-map/likelihood.js';
import { OUTCOME_OF_MODE } from '../../process-map/outcomes.js';
import type { Context } from '../context.js';
import { sayLoss } from '../losses.js';
import { type ExplanationRule, lines } from './finding.js';
import { currentShortfall } from './low-current.js';

/** Volts above the usual loss that two honest meters don't make: own choice, and so are 1 V and 4 V per 100 A below. */
const CLEAR_EXCESS_V = 0.7;

const worst = (c: Context, pick: (loss: Context['losses'][number]) => boolean) =>
  c.losses.filter(pick).sort((a, b) => b.excessV - a.excessV)[0];

/** Leads, joints, ground or gun take more volts than they should. */
export const leadLoss: ExplanationRule = {
  id: 'lead-loss',
  judge: ({ c }) => {
    const direct = worst(c, (one) => one.from !== 'set' && one.excessV >= CLEAR_EXCESS_V);
    const whole = worst(c, (one) => one.from === 'set' && one.to !== 'source');
    const loss = direct ?? (whole && whole.excessV >= CLEAR_EXCESS_V ? whole : undefined);
    if (loss === undefined) return null;
    // Volts of a place that nobody stated say little where the amperes are too low as well.
    const fromNowhere = loss.to === 'trace' && currentShortfall(c) !== null;
    return {
      weight: direct !== undefined ? 0.93 : fromNowhere ? 0.6 : 0.84,
      what: message('lead-loss'),
      evidenceFor: [sayLoss(loss)],
      evidenceAgainst: lines(
        direct === undefined && message('terminal-volts-unknown'),
        c.setup.cableLengthM === null &&
          message('cable-length-taken', { lengthM: CABLE_DROP.lengthM }),
      ),
      check: message('check-leads'),
    };
  },
};

/** The source itself gives way under load. */
export const droopingSupply: ExplanationRule = {
  id: 'drooping-supply',
  judge: ({ c, trouble }) => {
    const atSource = worst(c, (one) => one.to === 'source' && one.excessV >= 1);
    const slope = c.setup.sourceSlopeVPer100A;
    const steep = slope !== null && slope > 4;
    const whole = worst(c, (one) => one.from === 'set' && one.excessV >= CLEAR_EXCESS_V);
    const sourceKnown = c.losses.some((one) => one.to === 'source');
    if (atSource === undefined && !(steep && trouble) && (whole === undefined || sourceKnown)) {
      return null;
    }
    return {
      weight: atSource !== undefined ? 0.94 : steep ? 0.83 : 0.6,
      what: message('drooping-supply'),
      evidenceFor: lines(
        atSource && sayLoss(atSource),
        steep && message('slope-stated', { slopeVPer100A: slope, usualVPer100A: 3 }),
        atSource === undefined && !steep && whole && sayLoss(whole),
      ),
      evidenceAgainst: lines(atSource === undefined && message('terminal-volts-not-measured')),
      check: message('check-source-terminals'),
    };
  },
};

/** What the dial says suits the wanted mode; what normally arrives does not. */
export const normalDrop: ExplanationRule = {
  id: 'normal-drop',
  judge: ({ c, wanted, seen, intended, trouble }) => {
    const loss = c.losses.find((one) => one.from === 'set' && one.volts >= 1 && one.excessV === 0);
    const target = intended?.answer === 'disagrees' ? wanted : null;
    if (loss === undefined || !trouble || target === null || seen === null) return null;
    const outcome = target === 'pulsed-spray' ? null : OUTCOME_OF_MODE[target];
    const { currentA } = c.point;
    const now = outcome === null ? undefined : c.expected.outcomes?.[outcome];
    if (outcome === null || now === undefined || currentA === null) return null;
    const dial = likelihoodsAt(c.bounds.map, loss.fromV, middle(currentA))[outcome];
    if (dial < 0.5 || now > 0.3) return null;
    return {
      weight: 0.86,
      what: message('normal-drop', { wanted: target }),
      evidenceFor: [sayLoss(loss)],
      evidenceAgainst: [],
      check: message('check-measured-not-dial'),
    };
  },
};
