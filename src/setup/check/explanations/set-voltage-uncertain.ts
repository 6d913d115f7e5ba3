import { MODES } from '../../../core/index.js';
import { rangeText } from '../../index.js';
import { type ExplanationRule, lines } from './finding.js';

/** Only the set voltage is known, and what it may leave spans two modes. */
export const setVoltageUncertain: ExplanationRule = {
  id: 'set-voltage-uncertain',
  judge: ({ c, settings, seen }) => {
    const { voltageV } = c.judged;
    if (settings.answer !== 'cannot-tell' || voltageV === null || seen === null) return null;
    if (c.point.voltageMeasured || voltageV.max - voltageV.min < 1.5) return null;
    const open = MODES.filter((mode) => mode !== 'pulsed-spray' && c.permitted[mode] !== 'no');
    if (open.length < 2) return null;
    return {
      weight: 0.76,
      text: `Only the set voltage is known. What it leaves at the feeder spans ${open.join(' and ')}: get the measured voltage first.`,
      evidenceFor: lines(
        c.point.voltageFrom,
        c.setup.sourceSlopeVPer100A === null && 'The slope of the source is not known.',
        c.setup.cableLengthM === null && 'The length of the leads is not known.',
        `The span is ${rangeText(voltageV)} V.`,
      ),
      evidenceAgainst: [],
      check:
        'Read the voltage at the feeder while welding, and state it together with the place where it was read.',
    };
  },
};
