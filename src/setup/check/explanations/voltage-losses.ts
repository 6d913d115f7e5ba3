import { permits } from '../../index.js';
import type { Context } from '../context.js';
import { lossText } from '../losses.js';
import { type ExplanationRule, lines } from './finding.js';

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
    return {
      weight: direct === undefined ? 0.84 : 0.93,
      text: 'More voltage is lost between source and arc than leads and joints should take.',
      evidenceFor: [lossText(loss)],
      evidenceAgainst: lines(
        direct === undefined && 'The volts at the source’s terminals are not known: it may droop.',
        c.setup.cableLengthM === null && 'The cable length is not stated; 12.5 m was taken.',
      ),
      check:
        'While welding, measure the volts at the source and at the feeder; feel for warm joints afterwards, with the power off. Look at the ground clamp, lead connections, gun cable and contact tip.',
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
      text: 'The source droops: its terminals stand well below the set voltage under load.',
      evidenceFor: lines(
        atSource && lossText(atSource),
        steep &&
          `A slope of ${slope} V per 100 A is stated; up to 3 is common practice for this process.`,
        atSource === undefined && !steep && whole && lossText(whole),
      ),
      evidenceAgainst: lines(
        atSource === undefined && 'The volts at the source’s terminals were not measured.',
      ),
      check:
        'Measure the volts at the source’s own terminals while welding, and see that it runs constant voltage, with all mains phases present.',
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
    const at = { min: loss.fromV, max: loss.fromV };
    const dial = permits({ voltageV: at, currentA: c.judged.currentA }, c.bounds, c.setup.source);
    if (dial[target] === 'no' || c.permittedAtPoint[target] !== 'no') return null;
    return {
      weight: 0.86,
      text: `The set voltage would suit ${target}, but after the usual losses the arc gets less.`,
      evidenceFor: [lossText(loss)],
      evidenceAgainst: [],
      check:
        'Take the voltage measured at the feeder, not the dial, as the one to hold against the qualified procedure.',
    };
  },
};
