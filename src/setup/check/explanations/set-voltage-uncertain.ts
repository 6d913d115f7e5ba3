import { MODES } from '../../../core/index.js';
import { message } from '../../../messages/index.js';
import { type ExplanationRule, lines } from './finding.js';

/** Only the set voltage is known, and what it may leave spans two modes. */
export const setVoltageUncertain: ExplanationRule = {
  id: 'set-voltage-uncertain',
  judge: ({ c, settings, seen }) => {
    const { voltageV } = c.judged;
    const from = c.point.voltageFromMessage;
    if (settings.answer !== 'cannot-tell' || voltageV === null || seen === null) return null;
    if (c.point.voltageMeasured || voltageV.max - voltageV.min < 1.5) return null;
    const open = MODES.filter((mode) => mode !== 'pulsed-spray' && c.permitted[mode] !== 'no');
    if (open.length < 2) return null;
    return {
      weight: 0.76,
      what: message('set-voltage-uncertain', { open }),
      evidenceFor: lines(
        from !== null && { ...from, text: c.point.voltageFrom! },
        c.setup.sourceSlopeVPer100A === null && message('slope-not-known'),
        c.setup.cableLengthM === null && message('cable-length-not-known'),
        message('voltage-span', { feederV: voltageV }),
      ),
      evidenceAgainst: [],
      check: message('check-feeder-voltage'),
    };
  },
};
